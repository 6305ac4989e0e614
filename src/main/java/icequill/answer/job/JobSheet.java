package icequill.answer.job;

import icequill.document.RepairQuote;
import icequill.explain.ConstantKey;
import icequill.life.job.JobState;
import icequill.life.job.JobState.Accepted;
import icequill.life.job.JobState.Done;
import icequill.life.job.JobState.Ready;
import icequill.life.job.JobState.Waiting;
import icequill.life.job.JobState.Withdrawn;
import icequill.money.Amounts;
import icequill.shop.life.JobLife;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * A job: a repair that was accepted.
 *
 * @param quote by number, by which the job is called too
 * @param site by id
 * @param work that was quoted
 * @param gross of the quote
 * @param deposit that is due before the work; missing where none is
 * @param since the day of the last step
 * @param expected when parts are to come; missing where nobody said
 * @param late whether they were to come before the day of asking
 * @param planned the visit that it was quoted as, by id
 * @param visit on which it was done, by id
 * @param invoices of that visit that stand
 * @param reason why it will not be done
 * @param stages that are asked for by themselves, in their order; empty where all is paid when the work is done
 * @param unpaid whether the work is to be done and its deposit did not come in
 */
public record JobSheet(String quote, Optional<String> site, String where, String machine, String work,
        MonetaryAmount gross, Optional<MonetaryAmount> deposit, State state, LocalDate since,
        Optional<String> supplier, Optional<LocalDate> expected, boolean late, Optional<String> planned,
        Optional<String> visit, List<String> invoices, Optional<String> reason,
        List<JobStage> stages, boolean unpaid) {

    /** Where it stands. */
    public enum State {
        ACCEPTED, PARTS_ORDERED, READY, DONE, BILLED, WITHDRAWN
    }

    public JobSheet {
        invoices = List.copyOf(invoices);
        stages = List.copyOf(stages);
    }

    /**
     * A job as it is on a day.
     *
     * @param invoices that stand, of the visit on which it was done
     */
    public static JobSheet of(JobLife life, List<String> invoices, List<JobStage> stages, LocalDate day) {
        RepairQuote quote = life.paper();
        JobState state = life.state();
        Optional<Waiting> waiting = state instanceof Waiting parts ? Optional.of(parts) : Optional.empty();
        return new JobSheet(life.quote().issued().number(), life.quote().issued().origin().site(),
                life.quote().issued().text().replace("\n", ", "), quote.machine().id(), quote.work(),
                quote.totals().gross(), quote.deposit().map(RepairQuote.Deposit::amount), state(state, invoices),
                state.since(), waiting.flatMap(Waiting::supplier), waiting.flatMap(Waiting::expected),
                waiting.filter(parts -> parts.isLate(day)).isPresent(), life.planned(),
                state instanceof Done done ? Optional.of(done.visit()) : Optional.empty(), invoices,
                state instanceof Withdrawn gone ? gone.reason() : Optional.empty(), stages,
                isToBeDone(state) && stages.stream().anyMatch(JobStage::isMissing));
    }

    private static boolean isToBeDone(JobState state) {
        return !(state instanceof Done) && !(state instanceof Withdrawn);
    }

    private static State state(JobState state, List<String> invoices) {
        return switch (state) {
        case Accepted open -> State.ACCEPTED;
        case Waiting open -> State.PARTS_ORDERED;
        case Ready open -> State.READY;
        case Done over -> invoices.isEmpty() ? State.DONE : State.BILLED;
        case Withdrawn over -> State.WITHDRAWN;
        };
    }

    /** Whether nothing is left to do. */
    public boolean isOver() {
        return state == State.BILLED || state == State.WITHDRAWN;
    }

    /** Names and values, for a table of text. */
    public List<List<String>> rows() {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("quote", quote));
        rows.add(List.of("where", where));
        rows.add(List.of("machine", machine));
        rows.add(List.of("work", work));
        rows.add(List.of("gross", gross.getCurrency().getCurrencyCode() + " " + Amounts.plain(gross)));
        deposit.ifPresent(amount -> rows.add(List.of("deposit", Amounts.plain(amount))));
        rows.add(List.of("state", ConstantKey.words(state.name()) + " since " + since));
        supplier.ifPresent(name -> rows.add(List.of("supplier", name)));
        expected.ifPresent(day -> rows.add(List.of("expected", day + (late ? ", late" : ""))));
        planned.ifPresent(id -> rows.add(List.of("planned", id)));
        visit.ifPresent(id -> rows.add(List.of("visit", id)));
        invoices.forEach(number -> rows.add(List.of("invoice", number)));
        stages.forEach(stage -> rows.add(List.of("stage " + stage.part(), stage.text())));
        if (unpaid) {
            rows.add(List.of("unpaid", "the deposit did not come in yet"));
        }
        reason.ifPresent(words -> rows.add(List.of("reason", words)));
        return rows;
    }
}
