package icequill.outlook;

import icequill.document.BrushingSheet;
import icequill.document.BrushingSheet.Charge;
import icequill.document.BrushingSheet.Comparison;
import icequill.document.BrushingSheet.Left;
import icequill.document.BrushingSheet.Reason;
import icequill.document.BrushingSheet.Sum;
import icequill.explain.Explanation;
import icequill.explain.Figure;
import icequill.money.Rounding;
import icequill.party.Language;
import icequill.party.Machine;
import icequill.plans.HypotheticalCall;
import icequill.pricer.PricedVisit;
import icequill.problem.Code;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.work.Caution;
import icequill.work.ChargeClass;
import icequill.work.Hazard;
import icequill.work.Hazards;
import icequill.work.SafetyPaper;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Puts a brushing sheet together: who may brush what, and what it costs and saves. */
record BrushingAssembly(BrushingCase hand, Language language) {

    private static final int MINUTES_OF_AN_HOUR = 60;
    /** Minutes that a technician takes for one condenser (common practice). */
    private static final int BRUSHING = 10;
    private static final int MONTHS = 12;

    /** The sheet, or why there can be none for this hand.site(). */
    Validated<BrushingSheet> sheet(LocalDate date) {
        Problems problems = new Problems();
        if (yours().isEmpty()) {
            problems.add(new Problem(Code.NOT_ALLOWED, hand.request().place(),
                    "no machine of this site may be brushed by the customer's staff: " + hand.site().machines().stream()
                            .map(machine -> machine.id() + " " + reasons(machine)).collect(Collectors.joining(", ")),
                    "a self-contained, air-cooled machine with cord and plug that is listed as reachable"));
        }
        return problems.or(() -> date).then(day -> new HypotheticalCall(hand.shop(), hand.site(), hand.rates())
                .price(day, hand.rates().labor().bands().getFirst(),
                        HypotheticalCall.Work.of(BRUSHING, ChargeClass.CLEANING, List.of())))
                .then(priced -> savings(date, comparison(priced))
                        .map(savings -> assembled(date, priced, savings)));
    }

    private Validated<Optional<BrushingSheet.Savings>> savings(LocalDate date, Comparison comparison) {
        return hand.expected()
                .map(found -> new BrushingSavings(hand, found, yours()).over(date, comparison).map(Optional::of))
                .orElseGet(() -> Validated.valid(Optional.empty()));
    }

    private List<Machine> yours() {
        return hand.site().machines().stream().filter(machine -> reasons(machine).isEmpty()).toList();
    }

    private List<Reason> reasons(Machine machine) {
        List<Reason> reasons = new ArrayList<>();
        if (machine.cooling() == Machine.Cooling.WATER) {
            reasons.add(Reason.WATER_COOLED);
        }
        if (machine.form() == Machine.Form.REMOTE) {
            reasons.add(Reason.REMOTE);
        }
        if (machine.form() == Machine.Form.HEAD) {
            reasons.add(Reason.HEAD);
        }
        if (machine.connection() == Machine.Connection.HARD_WIRED) {
            reasons.add(Reason.HARD_WIRED);
        }
        boolean reachable = hand.request().reachable().stream().anyMatch(named -> named.machine().equals(machine.id()));
        // Of others it is not asked, so that the sheet gives the reason that lasts.
        if (reasons.isEmpty() && !reachable) {
            reasons.add(Reason.BEHIND_PANEL);
        }
        return reasons;
    }

    private BrushingSheet assembled(LocalDate date, PricedVisit priced, Optional<BrushingSheet.Savings> savings) {
        List<Left> left = hand.site().machines().stream().filter(machine -> !reasons(machine).isEmpty())
                .map(machine -> new Left(machine, reasons(machine))).toList();
        return new BrushingSheet(date, hand.shop(), language, hand.shop().paper(), hand.site().customer().name(),
                hand.site().name(),
                hand.site().storeNumber(), hand.site().address(), yours(), left, comparison(priced), savings,
                cautions());
    }

    /** Those of brushing, and of being near any machine of the hand.site(). */
    private List<Caution> cautions() {
        Set<Hazard> hazards = Hazards.always();
        yours().forEach(machine -> hazards.addAll(Hazards.ofBrushing(machine)));
        hand.site().machines().forEach(machine -> hazards.addAll(Hazards.of(hand.site(), machine)));
        return List.copyOf(Hazard.cautions(SafetyPaper.BRUSHING_SHEET, hazards));
    }

    private Comparison comparison(PricedVisit priced) {
        List<Charge> ours = priced.lines().stream()
                .map(line -> new Charge(line.text(), line.net(), withoutArrival(line.how()))).toList();
        Sum visit = sum(ours.stream().map(charge -> Figure.price(charge.net(), "")).reduce(Figure::plus)
                .orElseThrow());
        Sum own = sum(work(hand.request().minutes()));
        Figure brush = Figure.price(hand.request().brush(), "");
        Sum difference = sum(Figure.price(visit.amount(), "").minus(Figure.price(own.amount(), "")).minus(brush));
        Sum year = sum(work((long) MONTHS * hand.request().minutes() * yours().size()).plus(brush));
        return new Comparison(ours, visit, own, hand.request().brush(), difference, year);
    }

    /** Nobody has come, so it is not said when. */
    private static Explanation withoutArrival(Explanation how) {
        return new Explanation(how.figure(), how.reasons().stream()
                .filter(reason -> !reason.key().equals("reason.band-on-arrival")).toList());
    }

    private Figure work(long minutes) {
        return Figure.term(minutes, "min").times(Figure.price(hand.request().wage(), "h"))
                .over(Figure.term(MINUTES_OF_AN_HOUR, "min/h")).rounded(Rounding.LINE, hand.shop().currency());
    }

    private Sum sum(Figure figure) {
        Explanation how = Explanation.of(figure);
        return new Sum(how.amount(hand.shop().currency()), how);
    }
}
