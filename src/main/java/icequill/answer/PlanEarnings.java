package icequill.answer;

import icequill.answer.price.PlanMargins;
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
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.money.MonetaryAmount;

/** What each plan costs the shop and earns, slot by slot, and what moves it. The owner's alone. */
public final class PlanEarnings implements Sheet {

    private static final int HUNDRED = 100;
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
        return margins().map(PlanEarnings::cells).toList();
    }

    private static List<String> cells(PlanMargins.Row row) {
        return List.of(row.plan(), row.what(),
                row.minutes().stream().map(String::valueOf).collect(Collectors.joining(" + ")),
                row.list().map(PlanEarnings::plain).orElse(""), plain(row.price()), plain(row.cost()),
                plain(row.margin()), row.percent().map(share -> share.toPlainString() + "%").orElse(""));
    }

    private Stream<PlanMargins.Row> margins() {
        return hand.plans().stream().flatMap(plan -> {
            AgreementMargin margin = AgreementMargin.of(plan.year());
            return Stream.of(visits(plan, margin), calls(plan, margin).stream(), Stream.of(year(plan, margin)))
                    .flatMap(rows -> rows);
        });
    }

    private Stream<PlanMargins.Row> visits(PricedPlan plan, AgreementMargin margin) {
        return IntStream.range(0, margin.slots().size()).mapToObj(i -> {
            AgreementMargin.Slot slot = margin.slots().get(i);
            LocalDate date = slot.visit().date();
            return new PlanMargins.Row(name(plan), PlanMargins.Kind.VISIT,
                    date + " " + slot.visit().slot().scope().name().in(language), Optional.of(date),
                    plan.staffedVisit(i).crew().stream().map(StaffedVisit.Person::minutes).toList(),
                    Optional.of(slot.list()), slot.price(), slot.cost(), slot.margin(),
                    share(slot.margin(), slot.price()));
        });
    }

    private Optional<PlanMargins.Row> calls(PricedPlan plan, AgreementMargin margin) {
        MonetaryAmount reserve = plan.year().reserve();
        MonetaryAmount earned = reserve.subtract(margin.calls().amount());
        return reserve.isZero()
                ? Optional.empty()
                : Optional.of(new PlanMargins.Row(name(plan), PlanMargins.Kind.INCLUDED_CALLS,
                        sentences.word("earnings.calls"), Optional.empty(), List.of(), Optional.empty(), reserve,
                        margin.calls().amount(), earned, share(earned, reserve)));
    }

    private PlanMargins.Row year(PricedPlan plan, AgreementMargin margin) {
        return new PlanMargins.Row(name(plan), PlanMargins.Kind.YEAR, sentences.word("earnings.year"),
                Optional.empty(), List.of(), Optional.of(plan.year().list()), margin.price(), margin.cost(),
                margin.margin(), share(margin.margin(), margin.price()));
    }

    private String name(PricedPlan plan) {
        return plan.tier().name().in(language);
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

    /** The table as data. */
    @Override
    public PlanMargins data() {
        return new PlanMargins(margins().toList(), movers(), explained()
                .map(cost -> new PlanMargins.Figured(cost.text(), cost.how().text(hand.setting().rates().currency()),
                        why(cost.how()).toList()))
                .distinct().toList());
    }

    /** Percent of the price, to one decimal. */
    private static Optional<BigDecimal> share(MonetaryAmount margin, MonetaryAmount price) {
        if (!price.isPositive()) {
            return Optional.empty();
        }
        Figure share = Figure.price(margin, "").over(Figure.price(price, "")).times(Figure.term(HUNDRED, ""));
        return Optional.of(Rounding.halfUp(share.exact(), 1));
    }

    private static String plain(MonetaryAmount amount) {
        return Amounts.plain(amount);
    }
}
