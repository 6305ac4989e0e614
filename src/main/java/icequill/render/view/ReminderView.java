package icequill.render.view;

import icequill.account.Claim;
import icequill.account.Owed;
import icequill.document.Reminder;
import icequill.render.page.Page;
import icequill.render.page.Texts;
import icequill.render.words.Sentences;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A reminder as texts, ready for {@code reminder.ftlh}. */
public record ReminderView(Reminder reminder, Sentences sentences, AccountWords words) {

    public static Page of(Reminder reminder) {
        Sentences sentences = Sentences.of(reminder.language(), reminder.shop().address().country());
        return new ReminderView(reminder, sentences, new AccountWords(sentences)).page();
    }

    /**
     * What is asked for.
     *
     * @param claims what is past due
     * @param asked their sum
     * @param stores the parts of several stores; may be empty
     * @param onTop interest and compensation; may be empty
     * @param basis what these are asked for by; may be empty
     * @param counted until which day payments are
     * @param later what is dated later; may be empty
     */
    record Asked(String currency, LetterView.Pay pay, String opening, List<ClaimRow> claims, String asked,
            List<AccountWords.StoreSum> stores, List<Late> onTop, String basis, String onTopSum, String total,
            List<Disputed> disputed, String please, String call, String counted, String later)
            implements
            Texts {}

    /** @param note may be empty, like the store */
    record ClaimRow(String what, String note, String store, String date, String due, String days, String total,
            String asked)
            implements
            Texts {}

    /** @param note may be empty */
    record Late(String what, String note, String amount) implements Texts {}

    record Disputed(String what, String note, String due, String amount) implements Texts {}

    private Page page() {
        return Page.of(new LetterView(reminder, sentences.word("reminder.title." + key()), sentences)
                .letter(reminder.billTo(), false, facts()), asked());
    }

    private Asked asked() {
        String total = words.withCurrency(reminder.claims().total());
        String by = sentences.formats().day(reminder.by());
        List<Claim> claims = reminder.claims().claims();
        return new Asked(reminder.claims().currency().getCurrencyCode(),
                new LetterView.Pay(sentences.word("reminder.asked"), total, false, by),
                sentences.word("reminder.opening." + key()), claims.stream().map(this::claim).toList(),
                words.amount(reminder.claims().asked()),
                words.byStore(claims.stream().map(Claim::owed).toList(),
                        owed -> claims.stream().filter(claim -> claim.owed().equals(owed)).findFirst().orElseThrow()
                                .asked()),
                claims.stream().flatMap(this::onTop).toList(),
                reminder.late().map(late -> sentences.word("reminder.basis",
                        sentences.formats().percent(late.rate().value()), sentences.in(late.basis()))).orElse(""),
                words.amount(reminder.claims().onTop()), words.amount(reminder.claims().total()),
                reminder.claims().disputed().stream().map(this::disputed).toList(),
                sentences.word("reminder.please." + key(), total, by),
                reminder.contact().name()
                        .map(name -> sentences.word("reminder.call-person", name, reminder.contact().phone()))
                        .orElseGet(() -> sentences.word("reminder.call", reminder.contact().phone())),
                sentences.word("reminder.counted", sentences.formats().day(reminder.date())),
                words.later(reminder.later()));
    }

    private String key() {
        return String.valueOf(reminder.level().number());
    }

    private List<Details.Row> facts() {
        Details details = new Details(sentences).add("reminder.date", sentences.formats().day(reminder.date()));
        if (!reminder.earlier().isEmpty()) {
            details.add("reminder.earlier", reminder.earlier().stream().map(sentences.formats()::day)
                    .collect(Collectors.joining("; ")));
        }
        return details.add("fact.vendor", reminder.vendorNumber()).rows();
    }

    private ClaimRow claim(Claim claim) {
        Owed owed = claim.owed();
        String note = AccountWords.joined(Stream.of(owed.purchaseOrder().map(words::purchaseOrder).stream(),
                lessPaid(owed),
                owed.disputed().map(part -> sentences.word("reminder.less-disputed", words.amount(part.amount())))
                        .stream(),
                Stream.of(claim.setOff()).filter(off -> !off.isZero())
                        .map(off -> sentences.word("reminder.less-credit", words.amount(off)))));
        return new ClaimRow(words.named(owed), note, owed.store().orElse(""), sentences.formats().day(owed.date()),
                sentences.formats().day(owed.due()), String.valueOf(owed.daysLate()), words.amount(owed.total()),
                words.amount(claim.asked()));
    }

    private Stream<String> lessPaid(Owed owed) {
        return Stream.of(owed.paid().add(owed.credited())).filter(settled -> !settled.isZero())
                .map(settled -> sentences.word("reminder.less-paid", words.amount(settled)));
    }

    /** Interest with its arithmetic, and the fixed compensation. */
    private Stream<Late> onTop(Claim claim) {
        List<Late> rows = new ArrayList<>();
        String number = claim.owed().number();
        claim.late().ifPresent(late -> {
            rows.add(new Late(sentences.word("reminder.interest", number),
                    Stream.concat(Stream.of(sentences.formula(late.how().figure())),
                            late.how().reasons().stream().map(sentences::say)).collect(Collectors.joining("; ")),
                    words.amount(late.interest())));
            late.fixed().ifPresent(
                    fixed -> rows.add(new Late(sentences.word("reminder.fixed", number), "", words.amount(fixed))));
        });
        return rows.stream();
    }

    private Disputed disputed(Owed owed) {
        return new Disputed(words.named(owed), owed.disputed().map(Owed.Disputed::reason).orElse(""),
                sentences.formats().day(owed.due()),
                owed.disputed().map(part -> words.amount(part.amount())).orElse(""));
    }
}
