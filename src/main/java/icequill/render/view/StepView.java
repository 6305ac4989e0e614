package icequill.render.view;

import icequill.document.Schedule;
import icequill.document.WorkSheet;
import icequill.document.WorkSheet.Dose;
import icequill.document.WorkSheet.Step;
import icequill.explain.ConstantKey;
import icequill.party.Machine;
import icequill.render.page.Texts;
import icequill.render.words.Sentences;
import icequill.work.Caution;
import icequill.work.MachineState;
import icequill.work.Part;
import icequill.work.Procedure;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * One step of a work sheet as texts.
 *
 * @param machine that it is done at
 */
record StepView(Step step, Machine machine, WorkSheet sheet, Sentences sentences) {

    private static final int FILTER_TICKS = 5;
    /** What is settled before the first step needs no reminder at each. */
    private static final Set<Caution> BEFORE_ALL = Set.of(Caution.LABEL_FIRST, Caution.BLEACH_BY_STRENGTH,
            Caution.DISCARD_FIRST_ICE);

    /**
     * What the sheet says of the step.
     *
     * @param state in which the machine is
     * @param minutes may be empty
     * @param turn when and by whom; may be empty
     * @param ticks what is ticked one by one
     * @param blanks what is measured and written down
     */
    record Told(String name, String state, String minutes, String turn, List<String> details, List<String> cautions,
            List<String> reminders, List<String> ticks, List<String> blanks)
            implements
            Texts {}

    /** @param said cautions that the sheet told in full already; of these a few words are enough */
    Told told(Set<Caution> said) {
        return new Told(name(), state(), minutes(), turn(), details(),
                step.cautions().stream().filter(caution -> !said.contains(caution))
                        .map(new CautionWords(sentences)::full).toList(),
                reminders(said), ticks(), step.procedure().readings().stream()
                        .map(reading -> sentences.word("measure." + ConstantKey.of(reading))).toList());
    }

    /** Gloves that resist acid do for what else is in the step. */
    private List<String> reminders(Set<Caution> said) {
        boolean acid = step.cautions().contains(Caution.ACID_GLOVES);
        return step.cautions().stream()
                .filter(caution -> said.contains(caution) && !BEFORE_ALL.contains(caution)
                        && !(acid && caution == Caution.GLOVES_AND_EYES))
                .map(new CautionWords(sentences)::brief).toList();
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

    /** When it is done, and where there are several people by whom; empty without a timetable. */
    private String turn() {
        return sheet.schedule().flatMap(schedule -> step.turn().map(turn -> turn(schedule, turn))).orElse("");
    }

    private String turn(Schedule schedule, WorkSheet.Turn turn) {
        String times = new ScheduleView(schedule, sheet.jobs(), sentences).times(turn);
        return turn.people().isEmpty() || schedule.people().size() == 1
                ? times
                : times + " · " + ScheduleView.letters(turn.people());
    }

    /** What passes by itself afterwards, and how long it takes where no times of day say so; nothing for switching. */
    private String minutes() {
        if (step.kind() != WorkSheet.Kind.TASK) {
            return "";
        }
        String attended = sentences.duration(step.attended());
        String alone = sentences.duration(step.unattended());
        if (turn().isEmpty()) {
            return step.unattended() == 0 ? attended : sentences.word("sheet.then", attended, alone);
        }
        return step.unattended() == 0 ? "" : sentences.word("sheet.alone", alone);
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
        return List.copyOf(details);
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
