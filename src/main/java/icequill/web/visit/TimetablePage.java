package icequill.web.visit;

import icequill.answer.TimetableSheet;
import icequill.answer.entry.VisitChoices;
import icequill.answer.history.VisitSheet;
import icequill.office.Office;
import icequill.office.asking.AskingOffice;
import icequill.office.care.HistoryOffice;
import icequill.problem.Validated;
import icequill.request.TickedTimes;
import icequill.shop.FormName;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.Page;
import java.time.ZonedDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** The shortest safe timetable of a planned visit, task after task. */
public final class TimetablePage implements Page {

    private static final String WAIT = "-wait";
    /** Steps of a task by themselves: a chemical is put in, and works. */
    private static final List<String> CHEMICAL = List.of("pour", "circulate");

    /**
     * What its page shows.
     *
     * @param steps in the order of their time
     */
    public record Shown(String visit, TimetableSheet.Data table, ZonedDateTime ends, List<Step> steps) {

        public Shown {
            steps = List.copyOf(steps);
        }
    }

    /**
     * A task, the wait after it, or a break.
     *
     * @param machine and {@code task}: in the words of the reader
     * @param isWait whether it passes by itself
     */
    public record Step(ZonedDateTime starts, ZonedDateTime ends, String machine, String task, boolean isWait,
            List<String> people) {

        public Step {
            people = List.copyOf(people);
        }
    }

    @Override
    public Answer answer(Asked asked) {
        String visit = asked.part("visit");
        return Answer.of(HistoryOffice.of(asked.book()).visit(visit, Optional.of(asked.reader().language()))
                .then(found -> Office.of(asked.book()).plan(new FormName.InBook(visit), OptionalInt.empty(),
                        new TickedTimes(List.of(), Optional.empty()), Optional.of(asked.reader().language()))
                        .map(sheet -> shown(asked, found, sheet.data()))),
                shown -> new Answer.Shown("timetable", shown, shown.table()));
    }

    private static Shown shown(Asked asked, VisitSheet found, TimetableSheet.Data table) {
        ZonedDateTime began = found.data().visit().began();
        Map<String, String> names = names(asked, found);
        return new Shown(found.data().visit().id(), table, began.plusMinutes(table.minutes()),
                table.tasks().stream().map(task -> step(task, began, names)).toList());
    }

    private static Step step(TimetableSheet.Task task, ZonedDateTime began, Map<String, String> names) {
        boolean isWait = task.people().isEmpty();
        String of = task.task().endsWith(WAIT)
                ? task.task().substring(0, task.task().length() - WAIT.length())
                : task.task();
        return new Step(began.plusMinutes(task.start()), began.plusMinutes(task.end()),
                names.getOrDefault(task.machine(), task.machine()), names.getOrDefault(of, of), isWait, task.people());
    }

    /** What machines and tasks are called, by their ids. */
    private static Map<String, String> names(Asked asked, VisitSheet found) {
        Map<String, String> names = new LinkedHashMap<>();
        CHEMICAL.forEach(step -> names.put(step, asked.reader().sentences().word("page.timetable." + step)));
        Validated<VisitChoices> choices = AskingOffice.of(asked.book()).choices(found.data().visit().site(),
                found.data().visit().began().toLocalDate(), asked.reader().language());
        choices.found().ifPresent(known -> known.machines().forEach(machine -> {
            names.put(machine.id(), machine.name());
            machine.tasks().forEach(task -> names.put(task.id(), task.name()));
        }));
        return names;
    }
}
