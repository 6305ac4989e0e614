package icequill.outlook;

import icequill.document.Outlook.Input;
import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.forecast.inputs.Origin;
import icequill.plans.SiteRisks;
import icequill.plans.SiteRisks.Since;
import icequill.request.BrushingRequest;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Says what a brushing sheet goes by: when the condensers were brushed last, as the customer says, or else by the shop's own visits.
 *
 * @param risks of the machines that the customer may brush
 */
record BrushingInputs(BrushingRequest request, SiteRisks risks) {

    /** Of more days than these it is only said of how many machines one is known. */
    private static final int MOST_DAYS = 3;

    List<Input> all() {
        List<Input> inputs = new ArrayList<>(brushed());
        risks.history().book().ifPresent(book -> inputs.add(BookInputs.calls(book)));
        return inputs;
    }

    private List<Input> brushed() {
        Map<Optional<LocalDate>, List<Since>> byDay = risks.since().stream()
                .collect(Collectors.groupingBy(Since::brushed, LinkedHashMap::new, Collectors.toList()));
        if (byDay.size() > MOST_DAYS) {
            int unknown = byDay.getOrDefault(Optional.<LocalDate>empty(), List.of()).size();
            int all = risks.since().size();
            return List.of(new Input(Phrase.of("brushing.in.known", Fact.number(all - unknown, ""),
                    Fact.number(all, ""), months()), origin()));
        }
        return byDay.entrySet().stream().map(entry -> brushed(entry.getKey(), where(entry.getValue()))).toList();
    }

    private Input brushed(Optional<LocalDate> day, Fact where) {
        return day.map(known -> new Input(Phrase.of("outlook.in.brushed", where, new Fact.Day(known)), origin()))
                .orElseGet(() -> new Input(Phrase.of(risks.history().book().isPresent()
                        ? "brushing.in.not-booked"
                        : "brushing.in.unknown", where, months()), origin()));
    }

    /** As the customer told us, by our own visits, or a guess. */
    private Phrase origin() {
        return request.lastBrushed().isPresent()
                ? InputsAssembly.origin(Origin.CUSTOMER)
                : risks.history().book().map(BookInputs::origin)
                        .orElseGet(() -> InputsAssembly.origin(Origin.ESTIMATE));
    }

    private Fact months() {
        return new Fact.Measure(risks.rates().unknownMonths(), "month");
    }

    private static Fact where(List<Since> machines) {
        return new Fact.Several(machines.stream().map(since -> since.machine().where()).distinct()
                .<Fact>map(Fact.Text::new).toList());
    }
}
