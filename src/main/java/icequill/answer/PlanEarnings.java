package icequill.answer;

import icequill.explain.Explanation;
import icequill.explain.Figure;
import icequill.explain.Phrase;
import icequill.files.answer.Sheet;
import icequill.money.Amounts;
import icequill.money.Rounding;
import icequill.party.Language;
import icequill.plans.PlanContext;
import icequill.plans.PricedPlan;
import icequill.pricer.AgreementMargin;
import icequill.pricer.PricedLine;
import icequill.pricer.StaffedVisit;
import icequill.render.words.Sentences;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.money.MonetaryAmount;

/** What each plan costs the shop and earns, slot by slot, and what moves it. The owner's alone. */
public final class PlanEarnings implements Sheet {

    private static final int HUNDRED = 100;
    /** How the columns are called in JSON, whatever the language. */
    private static final List<String> COLUMNS = List.of("plan", "visit", "minutes", "list", "price", "cost", "margin",
            "of price");

    private final PlanContext hand;
    private final Language language;
    private final Sentences sentences;

    public PlanEarnings(PlanContext hand, Language language) {
        this.hand = hand;
        this.language = language;
        this.sentences = Sentences.of(language, hand.setting().shop().address().country());
    }

    /** The head of the table. */
    public List<String> heads() {
        return Stream.of("plan", "visit", "minutes", "list", "price", "cost", "margin", "of-price")
                .map(key -> sentences.word("table." + key)).toList();
    }

    /** One row a visit, one for included calls, and one with the sums, for each plan. */
    public List<List<String>> rows() {
        List<List<String>> rows = new ArrayList<>();
        for (PricedPlan plan : hand.plans()) {
            AgreementMargin margin = AgreementMargin.of(plan.year());
            String name = plan.tier().name().in(language);
            for (int i = 0; i < margin.slots().size(); i++) {
                AgreementMargin.Slot slot = margin.slots().get(i);
                rows.add(row(name, slot.visit().date() + " " + slot.visit().slot().scope().name().in(language),
                        minutes(plan.staffedVisit(i)), plain(slot.list()), slot.price(), slot.cost(), slot.margin()));
            }
            if (!plan.year().reserve().isZero()) {
                rows.add(row(name, sentences.word("earnings.calls"), "", "", plan.year().reserve(),
                        margin.calls().amount(),
                        plan.year().reserve().subtract(margin.calls().amount())));
            }
            rows.add(row(name, sentences.word("earnings.year"), "", plain(plan.year().list()), margin.price(),
                    margin.cost(),
                    margin.margin()));
        }
        return rows;
    }

    /** What moves the margin of each plan: its cost by kind, the largest first, and what its discount gives away. */
    public List<String> movers() {
        List<String> movers = new ArrayList<>();
        for (PricedPlan plan : hand.plans()) {
            String costs = costs(plan).entrySet().stream()
                    .sorted(Comparator.comparing((Map.Entry<String, MonetaryAmount> entry) -> entry.getValue())
                            .reversed())
                    .map(entry -> entry.getKey() + " " + plain(entry.getValue()))
                    .collect(Collectors.joining(", "));
            int minutes = IntStream.range(0, plan.year().slots().size()).mapToObj(plan::staffedVisit)
                    .flatMap(visit -> visit.crew().stream()).mapToInt(StaffedVisit.Person::minutes).sum();
            movers.add(sentences.word("earnings.movers", plan.tier().name().in(language), costs,
                    plain(plan.year().discount()), String.valueOf(minutes), plain(tenMinutes(plan))));
            plan.unproven()
                    .forEach(phrase -> movers.add(plan.tier().name().in(language) + ": " + sentences.say(phrase)));
        }
        return movers;
    }

    /** How the cost of every line of the year was figured, and why, equal lines once. */
    public List<String> explanations() {
        return explained().map(cost -> cost.text() + ": " + Stream
                .concat(Stream.of(sentences.formula(cost.how().figure()) + " = " + plain(amount(cost.how()))),
                        why(cost.how()))
                .collect(Collectors.joining("; "))).distinct().toList();
    }

    private record Explained(String text, Explanation how) {}

    private Stream<Explained> explained() {
        return Stream.concat(lines().map(line -> new Explained(sentences.say(line.text()), line.cost().how())),
                hand.plans().stream().filter(plan -> !plan.year().reserve().isZero())
                        .map(plan -> new Explained(sentences.word("plan.reserve"), plan.year().reserveHow())));
    }

    private Stream<String> why(Explanation how) {
        return how.reasons().stream().map(sentences::say);
    }

    private MonetaryAmount amount(Explanation how) {
        return how.amount(hand.setting().rates().currency());
    }

    private Stream<PricedLine> lines() {
        return hand.plans().stream().flatMap(plan -> plan.year().slots().stream())
                .flatMap(slot -> slot.priced().lines().stream());
    }

    private Map<String, MonetaryAmount> costs(PricedPlan plan) {
        return plan.year().slots().stream().flatMap(slot -> slot.priced().lines().stream())
                .collect(Collectors.toMap(this::kind, line -> line.cost().amount(), MonetaryAmount::add,
                        LinkedHashMap::new));
    }

    private String kind(PricedLine line) {
        return sentences.say(Phrase.of("tax.reason", line.chargeClass().word()));
    }

    /** What ten minutes more of the first person on each visit would cost in wages. */
    private MonetaryAmount tenMinutes(PricedPlan plan) {
        String grade = plan.staffedVisit(0).crew().getFirst().grade();
        MonetaryAmount wage = hand.setting().rates().labor().grade(grade).orElseThrow().hourly()
                .wage(hand.setting().rates().labor().bands().getFirst());
        return Explanation.of(Figure.term(10L * plan.year().slots().size(), "min")
                .times(Figure.price(wage, "h"))
                .over(Figure.term(60, "min/h"))
                .rounded(Rounding.COST, wage.getCurrency())).amount(wage.getCurrency());
    }

    @Override
    public Object data() {
        return json();
    }

    /** The table as data; amounts are texts with the currency's decimals. */
    public Map<String, Object> json() {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("visits", rows().stream().map(this::view).toList());
        view.put("movers", movers());
        view.put("costs", explained().map(this::view).distinct().toList());
        return view;
    }

    private Map<String, Object> view(Explained cost) {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("text", cost.text());
        view.put("how", cost.how().text(hand.setting().rates().currency()));
        view.put("why", why(cost.how()).toList());
        return view;
    }

    private Map<String, Object> view(List<String> row) {
        Map<String, Object> view = new LinkedHashMap<>();
        for (int i = 0; i < row.size(); i++) {
            view.put(COLUMNS.get(i), row.get(i));
        }
        return view;
    }

    private static String minutes(StaffedVisit visit) {
        return visit.crew().stream().map(person -> String.valueOf(person.minutes())).collect(Collectors.joining(" + "));
    }

    private static List<String> row(String plan, String visit, String minutes, String list, MonetaryAmount price,
            MonetaryAmount cost, MonetaryAmount margin) {
        return List.of(plan, visit, minutes, list, plain(price), plain(cost), plain(margin), share(margin, price));
    }

    /** Percent of the price, to one decimal. */
    private static String share(MonetaryAmount margin, MonetaryAmount price) {
        if (!price.isPositive()) {
            return "";
        }
        Figure share = Figure.price(margin, "").over(Figure.price(price, "")).times(Figure.term(HUNDRED, ""));
        return Rounding.halfUp(share.exact(), 1).toPlainString() + "%";
    }

    private static String plain(MonetaryAmount amount) {
        return Amounts.plain(amount);
    }
}
