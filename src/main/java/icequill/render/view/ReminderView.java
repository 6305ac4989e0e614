package icequill.render.view;

import icequill.account.Claim;
import icequill.account.Owed;
import icequill.document.Reminder;
import icequill.render.words.Sentences;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A reminder as texts, ready for {@code reminder.ftlh}. */
public record ReminderView(Reminder reminder, Sentences sentences, AccountWords words) {

    public static Map<String, Object> of(Reminder reminder) {
        Sentences sentences = Sentences.of(reminder.language(), reminder.shop().address().country());
        return new ReminderView(reminder, sentences, new AccountWords(sentences)).model();
    }

    private Map<String, Object> model() {
        Map<String, Object> model = new LinkedHashMap<>(
                new LetterView(reminder, sentences.word("reminder.title." + key()), sentences)
                        .model(reminder.billTo(), facts()));
        String total = words.withCurrency(reminder.claims().total());
        String by = sentences.formats().day(reminder.by());
        model.put("draft", false);
        model.put("currency", reminder.claims().currency().getCurrencyCode());
        model.put("pay",
                Map.of("label", sentences.word("reminder.asked"), "amount", total, "nothing", false, "by", by));
        model.put("opening", sentences.word("reminder.opening." + key()));
        model.put("claims", reminder.claims().claims().stream().map(this::claim).toList());
        model.put("asked", words.amount(reminder.claims().asked()));
        model.put("stores", words.byStore(reminder.claims().claims().stream().map(Claim::owed).toList(),
                owed -> reminder.claims().claims().stream().filter(claim -> claim.owed().equals(owed)).findFirst()
                        .orElseThrow().asked()));
        model.put("onTop", reminder.claims().claims().stream().flatMap(this::onTop).toList());
        model.put("basis", reminder.late().map(late -> sentences.word("reminder.basis",
                sentences.formats().percent(late.rate().value()), sentences.in(late.basis()))).orElse(""));
        model.put("onTopSum", words.amount(reminder.claims().onTop()));
        model.put("total", words.amount(reminder.claims().total()));
        model.put("disputed", reminder.claims().disputed().stream().map(this::disputed).toList());
        model.put("please", sentences.word("reminder.please." + key(), total, by));
        model.put("call", reminder.contact().name()
                .map(name -> sentences.word("reminder.call-person", name, reminder.contact().phone()))
                .orElseGet(() -> sentences.word("reminder.call", reminder.contact().phone())));
        model.put("counted", sentences.word("reminder.counted", sentences.formats().day(reminder.date())));
        model.put("later", words.later(reminder.later()));
        return model;
    }

    private String key() {
        return String.valueOf(reminder.level().number());
    }

    private List<Map<String, String>> facts() {
        Details details = new Details(sentences).add("reminder.date", sentences.formats().day(reminder.date()));
        if (!reminder.earlier().isEmpty()) {
            details.add("reminder.earlier", reminder.earlier().stream().map(sentences.formats()::day)
                    .collect(Collectors.joining("; ")));
        }
        return details.add("fact.vendor", reminder.vendorNumber()).rows();
    }

    private Map<String, String> claim(Claim claim) {
        Owed owed = claim.owed();
        String note = AccountWords.joined(Stream.of(owed.purchaseOrder().map(words::purchaseOrder).stream(),
                lessPaid(owed),
                owed.disputed().map(part -> sentences.word("reminder.less-disputed", words.amount(part.amount())))
                        .stream(),
                Stream.of(claim.setOff()).filter(off -> !off.isZero())
                        .map(off -> sentences.word("reminder.less-credit", words.amount(off)))));
        return Map.of("what", words.named(owed), "note", note, "store",
                owed.store().orElse(""), "date", sentences.formats().day(owed.date()), "due",
                sentences.formats().day(owed.due()), "days", String.valueOf(owed.daysLate()), "total",
                words.amount(owed.total()), "asked", words.amount(claim.asked()));
    }

    private Stream<String> lessPaid(Owed owed) {
        return Stream.of(owed.paid().add(owed.credited())).filter(settled -> !settled.isZero())
                .map(settled -> sentences.word("reminder.less-paid", words.amount(settled)));
    }

    /** Interest with its arithmetic, and the fixed compensation. */
    private Stream<Map<String, String>> onTop(Claim claim) {
        List<Map<String, String>> rows = new ArrayList<>();
        String number = claim.owed().number();
        claim.late().ifPresent(late -> {
            rows.add(Map.of("what", sentences.word("reminder.interest", number), "note",
                    Stream.concat(Stream.of(sentences.formula(late.how().figure())),
                            late.how().reasons().stream().map(sentences::say)).collect(Collectors.joining("; ")),
                    "amount", words.amount(late.interest())));
            late.fixed().ifPresent(fixed -> rows.add(Map.of("what", sentences.word("reminder.fixed", number), "note",
                    "", "amount", words.amount(fixed))));
        });
        return rows.stream();
    }

    private Map<String, String> disputed(Owed owed) {
        return Map.of("what", words.named(owed), "note", owed.disputed().map(Owed.Disputed::reason).orElse(""),
                "due", sentences.formats().day(owed.due()), "amount",
                owed.disputed().map(part -> words.amount(part.amount())).orElse(""));
    }
}
