package icequill.web.offer;

import icequill.agreement.GoingOn;
import icequill.agreement.UsualTerms;
import icequill.answer.shown.QuoteStanding;
import icequill.document.MaintenanceQuote;
import icequill.document.PlanYear;
import icequill.explain.ConstantKey;
import icequill.life.quote.AcceptanceWay;
import icequill.life.quote.QuoteEvent.Acceptance;
import icequill.office.quoting.AgreementWish;
import icequill.office.quoting.QuoteLifeOffice;
import icequill.office.quoting.QuoteOffice;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.FieldPlaces;
import icequill.web.page.FormPage;
import icequill.web.page.Page;
import icequill.web.page.Paths;
import icequill.web.page.TypedChoice;
import icequill.web.page.TypedFields;
import icequill.web.page.TypedNumber;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/** Notes that the customer took a quote; one of maintenance becomes an agreement. */
public final class QuoteAcceptance implements Page, FormPage {

    /** A plan that can be ticked, with the price of a year before tax. */
    public record Plan(String id, String name, MonetaryAmount price) {}

    /**
     * What its page shows.
     *
     * @param plans none of a repair
     * @param usual what the agreement says unless something else is typed
     * @param start the first day of the agreement as it was quoted; empty of a repair
     */
    public record Shown(QuoteStanding quote, boolean isLapsed, List<Plan> plans, Optional<LocalDate> start,
            UsualTerms usual, List<String> ways, List<String> goesOn, TypedFields typed) {

        public Shown {
            plans = List.copyOf(plans);
            ways = List.copyOf(ways);
            goesOn = List.copyOf(goesOn);
        }
    }

    @Override
    public Answer answer(Asked asked) {
        return page(asked, TypedFields.NONE);
    }

    @Override
    public Validated<String> done(Asked asked) {
        Problems problems = new Problems();
        Optional<AcceptanceWay> way = problems
                .take(TypedChoice.of(asked, "way", List.of(AcceptanceWay.values()), ConstantKey::of));
        LocalDate day = asked.day("day", problems)
                .orElse(asked.reader().today());
        if (asked.text("name").isEmpty()) {
            problems.add(Code.MISSING, new Place("", 0, "name"), "nothing says who accepted", "a name");
        }
        AgreementWish wish = wish(asked, problems);
        return problems.or(() -> new Acceptance(day, asked.text("plan"), asked.text("name"), asked.text("title"),
                asked.text("authority"), asked.text("purchaseOrder"), way.orElseThrow(),
                asked.text("honored").isPresent()))
                .then(yes -> QuoteLifeOffice.of(asked.book()).accept(asked.part("number"), yes, wish))
                .map(standing -> Paths.quote(standing.number()));
    }

    private static AgreementWish wish(Asked asked, Problems problems) {
        return new AgreementWish(asked.text("existing"), asked.text("agreement"),
                asked.day("start", problems),
                whole(asked, "cancelDays", problems),
                asked.text("goesOn").flatMap(typed -> problems
                        .take(TypedChoice.of(asked, "goesOn", List.of(GoingOn.values()), ConstantKey::of))),
                whole(asked, "months", problems), whole(asked, "refuseDays", problems),
                asked.text("raise").flatMap(text -> problems.take(TypedNumber.of(text, "raise"))));
    }

    private static Optional<Integer> whole(Asked asked, String field, Problems problems) {
        return asked.text(field).flatMap(text -> problems.take(TypedNumber.of(text, field))).flatMap(number -> {
            Optional<Integer> count = Optional.of(number).filter(QuoteAcceptance::isWhole).map(BigDecimal::intValue);
            if (count.isEmpty()) {
                problems.add(Code.OUT_OF_RANGE, new Place("", 0, field), "not a whole number",
                        "a whole number, such as 30");
            }
            return count;
        });
    }

    private static boolean isWhole(BigDecimal number) {
        return number.stripTrailingZeros().scale() <= 0 && number.compareTo(BigDecimal.valueOf(1000)) <= 0;
    }

    @Override
    public Answer again(Asked asked, List<Problem> problems) {
        FieldPlaces places = new FieldPlaces();
        List.of("day", "plan", "name", "way", "start", "cancelDays", "goesOn", "months", "refuseDays", "raise",
                "existing").forEach(field -> places.put(field, field));
        places.put("number", "agreement");
        List.of("goesOn", "months", "refuseDays", "raise").forEach(field -> places.put("renewal." + field, field));
        return page(asked, new TypedFields(asked.fields(), problems.stream()
                .map(problem -> places.field(problem).map(field -> FieldPlaces.at(field, problem)).orElse(problem))
                .toList()));
    }

    private static Answer page(Asked asked, TypedFields typed) {
        String number = asked.part("number");
        Optional<MaintenanceQuote> quote = QuoteOffice.of(asked.book())
                .maintenance(number, asked.reader().language()).found();
        return Answer.of(QuoteLifeOffice.of(asked.book()).standing(number),
                standing -> new Answer.Shown("quote-accept", new Shown(standing,
                        asked.reader().today().isAfter(standing.validUntil()),
                        quote.map(MaintenanceQuote::plans).orElse(List.of()).stream()
                                .map(year -> plan(year, asked)).toList(),
                        quote.map(found -> found.term().start()), QuoteLifeOffice.of(asked.book()).usual(),
                        keys(AcceptanceWay.values()),
                        keys(GoingOn.values()), typed), standing));
    }

    private static Plan plan(PlanYear year, Asked asked) {
        return new Plan(year.tier().id(), year.tier().name().in(asked.reader().language()), year.price());
    }

    private static List<String> keys(Enum<?>[] constants) {
        return List.of(constants).stream().map(ConstantKey::of).toList();
    }
}
