package icequill.render.view;

import icequill.account.Ageing;
import icequill.account.Owed;
import icequill.document.Statement;
import icequill.render.words.Sentences;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.money.MonetaryAmount;

/** A statement as texts, ready for {@code statement.ftlh}. */
public record StatementView(Statement statement, Sentences sentences, AccountWords words) {

    public static Map<String, Object> of(Statement statement) {
        Sentences sentences = Sentences.of(statement.language(), statement.shop().address().country());
        return new StatementView(statement, sentences, new AccountWords(sentences)).model();
    }

    private Map<String, Object> model() {
        List<Map<String, String>> facts = new Details(sentences).add("account.date", day())
                .add("fact.vendor", statement.vendorNumber()).rows();
        Map<String, Object> model = new LinkedHashMap<>(
                new LetterView(statement, sentences.word("statement.title"), sentences).model(statement.billTo(),
                        facts));
        model.put("draft", false);
        model.put("currency", statement.balance().getCurrency().getCurrencyCode());
        model.put("pay", pay());
        model.put("open", open());
        model.put("balance", amount(statement.balance()));
        model.put("stores", stores());
        model.put("brackets", brackets(statement.ageing()));
        model.put("since", sentences.word("statement.since", sentences.formats().day(statement.since())));
        model.put("forward", Map.of("date", sentences.formats().day(statement.since()), "balance",
                amount(statement.broughtForward())));
        model.put("lines", statement.lines().stream().map(this::line).toList());
        model.put("later", words.later(statement.later()));
        return model;
    }

    /** The stores' parts of the balance, and what is to the customer's credit as a whole. */
    private List<Map<String, String>> stores() {
        List<Map<String, String>> stores = new ArrayList<>(words.byStore(statement.owed(), Owed::open));
        if (!stores.isEmpty() && !statement.credits().isEmpty()) {
            stores.add(Map.of("store", sentences.word("account.credits"), "amount",
                    amount(statement.balance().subtract(statement.ageing().sum()))));
        }
        return stores;
    }

    private String day() {
        return sentences.formats().day(statement.date());
    }

    private Map<String, Object> pay() {
        return Map.of("label", sentences.word("statement.balance-on", day()), "amount",
                words.withCurrency(statement.balance()), "nothing", !statement.balance().isPositive(), "by",
                words.withCurrency(statement.ageing().late()));
    }

    /** What is open, and what the customer has to his credit: their last column adds up to the balance. */
    private List<Map<String, String>> open() {
        List<Map<String, String>> rows = new ArrayList<>();
        statement.owed().forEach(owed -> rows.add(Map.of("what", words.named(owed), "note", words.state(owed), "store",
                owed.store().orElse(""), "date",
                sentences.formats().day(owed.date()), "due", sentences.formats().day(owed.due()), "total",
                amount(owed.total()), "settled", amount(owed.paid().add(owed.credited())), "open",
                amount(owed.open()))));
        statement.credits().forEach(credit -> rows.add(Map.of("what", words.named(credit), "note", "", "store",
                "", "date",
                sentences.formats().day(credit.date()), "due", "", "total", "", "settled", "", "open",
                amount(credit.open().negate()))));
        return rows;
    }

    /** From not yet due to the oldest, then their sum; and what is to the customer's credit, with the balance. */
    private List<Map<String, String>> brackets(Ageing ageing) {
        List<Map<String, String>> brackets = new ArrayList<>();
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
        return brackets;
    }

    private Map<String, String> bracket(String name, MonetaryAmount amount) {
        return Map.of("name", name, "amount", amount(amount));
    }

    private Map<String, String> line(Statement.Line line) {
        return Map.of("date", sentences.formats().day(line.movement().date()), "what",
                words.named(line.movement()), "note", words.reference(line.movement()), "amount",
                amount(line.movement().amount()), "balance", amount(line.balance()));
    }

    private String amount(MonetaryAmount amount) {
        return sentences.formats().amount(amount);
    }
}
