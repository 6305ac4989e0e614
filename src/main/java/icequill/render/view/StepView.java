package icequill.render.view;

import icequill.document.Schedule;
import icequill.document.WorkSheet;
import icequill.document.WorkSheet.Dose;
import icequill.document.WorkSheet.Step;
import icequill.explain.ConstantKey;
import icequill.party.Machine;
import icequill.render.words.Sentences;
import icequill.work.MachineState;
import icequill.work.Part;
import icequill.work.Procedure;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * One step of a work sheet as texts.
 *
 * @param machine that it is done at
 * @param sheet by whose numbers of cautions a step refers to them
 */
record StepView(Step step, Machine machine, WorkSheet sheet, Sentences sentences) {

    private static final int FILTER_TICKS = 5;

    Map<String, Object> model() {
        return Map.of("name", name(), "state", state(), "minutes", minutes(), "turn", turn(), "details", details(),
                "ticks",
                ticks(),
                "blanks", step.procedure().readings().stream()
                        .map(reading -> sentences.word("measure." + ConstantKey.of(reading))).toList());
    }

    private String name() {
        String locked = machine.isUnplugged() ? ".unplugged" : ".locked";
        return switch (step.kind()) {
        case TASK -> Sentences.capitalized(step.name());
        case SWITCH_OFF -> sentences.word("step.switch-off" + locked);
        case SWITCH_ON -> sentences.word("step.switch-on");
        };
    }

    private String state() {
        boolean locked = step.state() == MachineState.DE_ENERGIZED && !machine.isUnplugged();
        return sentences.word("state." + ConstantKey.of(step.state()) + (locked ? ".locked" : ""));
    }

    /** What is ticked one by one within a step. */
    private List<String> ticks() {
        return step.part() == Part.WATER_FILTER
                ? IntStream.rangeClosed(1, FILTER_TICKS).mapToObj(number -> sentences.word("filter." + number)).toList()
                : List.of();
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
        if (step.kind() != WorkSheet.Kind.TASK) {
            return "–";
        }
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
