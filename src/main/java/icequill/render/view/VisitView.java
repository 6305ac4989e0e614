package icequill.render.view;

import icequill.document.MachineReport;
import icequill.document.VisitSummary;
import icequill.explain.ConstantKey;
import icequill.render.page.Texts;
import icequill.render.words.MachineName;
import icequill.render.words.Sentences;
import icequill.work.Finding;
import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What was asked, found and done, as texts for {@code parts/visit.ftlh}. */
record VisitView(VisitSummary attended, List<MachineReport> reports, Sentences sentences) {

    record Visited(String visitHead, List<Details.Row> visitRows, List<Machine> machines) implements Texts {}

    record Machine(String name, List<Details.Row> rows, List<Reading> readings) implements Texts {}

    record Reading(String what, String before, String after) implements Texts {}

    Visited visited() {
        return new Visited(sentences.word(attended.sold().isPresent() ? "head.sale" : "head.visit"), visitRows(),
                reports.stream().map(this::machine).toList());
    }

    List<Details.Row> visitRows() {
        return visitRows("visit.times");
    }

    /** @param times what the times are, by the key of its words */
    List<Details.Row> visitRows(String times) {
        Details details = new Details(sentences);
        String where = attended.site() + ", " + String.join(", ", attended.address().lines());
        if (attended.sold().isPresent()) {
            details.add("sale." + ConstantKey.of(attended.sold().get()), where);
        } else {
            details.add("visit.site", where).add(times, times(attended.arrived(), attended.left()))
                    .add(attended.people().size() == 1 ? "visit.person" : "visit.people",
                            attended.people().stream().map(this::person).collect(Collectors.joining("; ")));
        }
        attended.call()
                .ifPresent(call -> details.add("visit.asked", call.askedBy() + ", " + moment(call.at()))
                        .add("visit.symptom", call.symptom())
                        .add("visit.promised", call.promised().map(this::moment)));
        return details.add("visit.approved", attended.order().approver()).rows();
    }

    /** Where the clocks were changed meanwhile, what the clock says is not the time that passed. */
    private String times(ZonedDateTime from, ZonedDateTime until) {
        String shown = moment(from) + " – " + until(from, until);
        Duration passed = Duration.between(from, until);
        Duration counted = Duration.between(from.toLocalDateTime(), until.toLocalDateTime());
        if (passed.equals(counted)) {
            return shown;
        }
        return sentences.word(passed.compareTo(counted) > 0 ? "visit.clocks-back" : "visit.clocks-forward", shown,
                String.valueOf(passed.toHours()), String.valueOf(passed.toMinutesPart()),
                String.valueOf(counted.toHours()), String.valueOf(counted.toMinutesPart()));
    }

    /** Own times are said of those who did not stay from the first arrival to the last departure. */
    private String person(VisitSummary.Person person) {
        String who = person.name() + ", " + person.grade();
        boolean throughout = person.arrived().isEqual(attended.arrived()) && person.left().isEqual(attended.left());
        return throughout ? who : who + ", " + span(person.arrived(), person.left());
    }

    String moment(ZonedDateTime moment) {
        return sentences.formats().day(moment.toLocalDate()) + ", " + sentences.formats().time(moment.toLocalTime());
    }

    private String span(ZonedDateTime from, ZonedDateTime until) {
        return sentences.formats().time(from.toLocalTime()) + " – " + until(from, until);
    }

    private String until(ZonedDateTime from, ZonedDateTime until) {
        return from.toLocalDate().equals(until.toLocalDate())
                ? sentences.formats().time(until.toLocalTime())
                : moment(until);
    }

    private Machine machine(MachineReport report) {
        return new Machine(new MachineName(report.machine(), sentences).text(),
                reportRows(report, new Details(sentences)).rows(), readings(report));
    }

    static List<Reading> readings(MachineReport report) {
        return report.finding().readings().stream().map(VisitView::reading).toList();
    }

    /** Why, what was found and done, and what was recommended, after what stands there already. */
    Details reportRows(MachineReport report, Details details) {
        Finding finding = report.finding();
        details.add(attended.call().isPresent() ? "machine.complaint" : "machine.reason", finding.complaint())
                .add("machine.cause", finding.cause()).add("machine.correction", finding.correction())
                .add("machine.tasks", tasks(report.tasks()));
        finding.recommendations().forEach(advice -> details.add(
                advice.accepted() ? "machine.recommended-accepted" : "machine.recommended-declined", advice.text()));
        return details;
    }

    private static Optional<String> tasks(List<String> tasks) {
        return tasks.isEmpty()
                ? Optional.empty()
                : Optional.of(Sentences.capitalized(String.join("; ", tasks)) + ".");
    }

    private static Reading reading(Finding.Reading reading) {
        String unit = reading.unit().isEmpty() ? "" : " (" + reading.unit() + ")";
        return new Reading(Sentences.capitalized(reading.what()) + unit, reading.before().orElse("–"),
                reading.after().orElse("–"));
    }
}
