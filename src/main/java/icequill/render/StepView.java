package icequill.render;

import icequill.document.Schedule;
import icequill.document.WorkSheet;
import icequill.document.WorkSheet.Dose;
import icequill.document.WorkSheet.Step;
import icequill.work.Procedure;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * One step of a work sheet as texts.
 *
 * @param sheet by whose numbers of cautions a step refers to them
 */
record StepView(Step step, WorkSheet sheet, Sentences sentences) {

    Map<String, Object> model() {
        return Map.of("name", Sentences.capitalized(step.name()), "state",
                sentences.word("state." + WorkSheetView.key(step.state())), "minutes", minutes(), "turn", turn(),
                "details", details(),
                "blanks", step.procedure().readings().stream()
                        .map(reading -> sentences.word("measure." + WorkSheetView.key(reading))).toList());
    }

    /** When it is done and by whom, a line each; none without a timetable. */
    private List<String> turn() {
        return sheet.schedule().flatMap(schedule -> step.turn().map(turn -> turn(schedule, turn))).orElse(List.of());
    }

    private List<String> turn(Schedule schedule, WorkSheet.Turn turn) {
        String times = new ScheduleView(schedule, sheet.jobs(), sentences).times(turn);
        return turn.people().isEmpty() ? List.of(times) : List.of(times, ScheduleView.letters(turn.people()));
    }

    private String minutes() {
        String attended = String.valueOf(step.attended());
        return step.unattended() == 0 ? attended : attended + " + " + step.unattended();
    }

    private List<String> details() {
        List<String> details = new ArrayList<>();
        step.doses().forEach(dose -> details.add(dose(dose)));
        Procedure procedure = step.procedure();
        procedure.timer().ifPresent(timer -> details.add(sentences.word("sheet.timer", String.valueOf(timer.least()),
                String.valueOf(timer.most()))));
        if (procedure.flushes() > 0) {
            details.add(sentences.word("sheet.flushes", String.valueOf(procedure.flushes())));
        }
        if (!step.cautions().isEmpty()) {
            details.add(sentences.word("sheet.see", step.cautions().stream().map(sheet.cautions()::indexOf).sorted()
                    .map(index -> String.valueOf(index + 1)).collect(Collectors.joining(", "))));
        }
        return details;
    }

    private String dose(Dose dose) {
        String name = Sentences.capitalized(dose.name()) + dose.registration()
                .map(number -> " (" + sentences.word("record.registration", number) + ")").orElse("");
        String amount = sentences.quantity(dose.quantity());
        return dose.label()
                .map(label -> sentences.word("sheet.dose-by-label", name, amount, sentences.quantity(label.water()),
                        sentences.quantity(label.most())))
                .orElseGet(() -> sentences.word("sheet.dose", name, amount));
    }
}
