package icequill.render.view;

import icequill.account.Ageing;
import icequill.account.OpenCredit;
import icequill.account.Owed;
import icequill.document.Statement;
import icequill.render.page.Page;
import icequill.render.page.Texts;
import icequill.render.words.Sentences;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.money.MonetaryAmount;

/** A statement as texts, ready for {@code statement.ftlh}. */
public record StatementView(Statement statement, Sentences sentences, AccountWords words) {

    public static Page of(Statement statement) {
        Sentences sentences = Sentences.of(statement.language(), statement.shop().address().country());
        return new StatementView(statement, sentences, new AccountWords(sentences)).page();
    }

    /**
     * The account.
     *
     * @param open what is owed, and what is to the customer's credit
     * @param stores the parts of several stores; may be empty
     * @param since heading of what happened
     * @param later what is dated later; may be empty
     */
    record Stated(String currency, LetterView.Pay pay, List<Open> open, String balance,
            List<AccountWords.StoreSum> stores, List<Bracket> brackets, String since, Forward forward,
            List<Line> lines, String later)
            implements
            Texts {}

    /** Each of them may be empty but for the first and the last. */
    record Open(String what, String note, String store, String date, String due, String total, String settled,
            String open)
            implements
            Texts {}

    record Bracket(String name, String amount) implements Texts {}

    /** What stood there before. */
    record Forward(String date, String balance) implements Texts {}

    /** @param note may be empty */
    record Line(String date, String what, String note, String amount, String balance) implements Texts {}

    private Page page() {
        List<Details.Row> facts = new Details(sentences).add("account.date", day())
                .add("fact.vendor", statement.vendorNumber()).rows();
        return Page.of(new LetterView(statement, sentences.word("statement.title"), sentences)
                .letter(statement.billTo(), false, facts), stated());
    }

    private Stated stated() {
        return new Stated(statement.balance().getCurrency().getCurrencyCode(), pay(), open(),
                amount(statement.balance()), stores(), brackets(statement.ageing()),
                sentences.word("statement.since", sentences.formats().day(statement.since())),
                new Forward(sentences.formats().day(statement.since()), amount(statement.broughtForward())),
                statement.lines().stream().map(this::line).toList(), words.later(statement.later()));
    }

    /** The stores' parts of the balance, and what is to the customer's credit as a whole. */
    private List<AccountWords.StoreSum> stores() {
        List<AccountWords.StoreSum> stores = new ArrayList<>(words.byStore(statement.owed(), Owed::open));
        if (!stores.isEmpty() && !statement.credits().isEmpty()) {
            stores.add(new AccountWords.StoreSum(sentences.word("account.credits"),
                    amount(statement.balance().subtract(statement.ageing().sum()))));
        }
        return List.copyOf(stores);
    }

    private String day() {
        return sentences.formats().day(statement.date());
    }

    private LetterView.Pay pay() {
        return new LetterView.Pay(sentences.word("statement.balance-on", day()),
                words.withCurrency(statement.balance()), !statement.balance().isPositive(),
                words.withCurrency(statement.ageing().late()));
    }

    /** What is open, and what the customer has to his credit: their last column adds up to the balance. */
    private List<Open> open() {
        return Stream.concat(statement.owed().stream().map(this::open), statement.credits().stream().map(this::open))
                .toList();
    }

    private Open open(Owed owed) {
        return new Open(words.named(owed), words.state(owed), owed.store().orElse(""),
                sentences.formats().day(owed.date()), sentences.formats().day(owed.due()), amount(owed.total()),
                amount(owed.paid().add(owed.credited())), amount(owed.open()));
    }

    private Open open(OpenCredit credit) {
        return new Open(words.named(credit), "", "", sentences.formats().day(credit.date()), "", "", "",
                amount(credit.open().negate()));
    }

    /** From not yet due to the oldest, then their sum; and what is to the customer's credit, with the balance. */
    private List<Bracket> brackets(Ageing ageing) {
        List<Bracket> brackets = new ArrayList<>();
        brackets.add(bracket(sentences.word("ageing.not-yet"), ageing.notYetDue()));
        int from = 1;
        for (int i = 0; i < ageing.bounds().size(); i++) {
            int until = ageing.bounds().get(i);
            brackets.add(bracket(sentences.word("ageing.days", String.valueOf(from), String.valueOf(until)),
                    ageing.pastDue().get(i)));
            from = until + 1;
        }
        brackets.add(bracket(sentences.word("ageing.over", String.valueOf(from - 1)), ageing.pastDue().getLast()));
        brackets.add(bracket(sentences.word("ageing.sum"), ageing.sum()));
        if (!statement.credits().isEmpty()) {
            brackets.add(bracket(sentences.word("ageing.credits"), statement.balance().subtract(ageing.sum())));
            brackets.add(bracket(sentences.word("ageing.balance"), statement.balance()));
        }
        return List.copyOf(brackets);
    }

    private Bracket bracket(String name, MonetaryAmount amount) {
        return new Bracket(name, amount(amount));
    }

    private Line line(Statement.Line line) {
        return new Line(sentences.formats().day(line.movement().date()), words.named(line.movement()),
                words.reference(line.movement()), amount(line.movement().amount()), amount(line.balance()));
    }

    private String amount(MonetaryAmount amount) {
        return sentences.formats().amount(amount);
    }
}
