package icequill.office.quoting;

import icequill.answer.job.JobStage;
import icequill.answer.job.JobStage.State;
import icequill.document.RepairQuote;
import icequill.ledger.Reading;
import icequill.ledger.papers.IssuedPaper;
import icequill.life.job.JobState;
import icequill.shop.life.JobBill;
import icequill.shop.life.JobBills;
import icequill.shop.life.JobLife;
import icequill.tax.Stage;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * What became of the parts that a job is paid in.
 *
 * @param ofWork the invoices of its visit that stand
 */
record JobStages(Reading open, JobLife job, JobBills bills, List<IssuedPaper> ofWork) {

    static List<JobStage> of(Reading open, JobLife job, List<IssuedPaper> ofWork) {
        return new JobStages(open, job, JobBills.of(open, job.quote().issued().number()), ofWork).all();
    }

    private List<JobStage> all() {
        List<Stage> stages = job.paper().parts().map(RepairQuote.InParts::stages).orElse(List.of());
        return IntStream.rangeClosed(1, stages.size())
                .filter(part -> stages.get(part - 1).kind() != Stage.Kind.FINAL)
                .mapToObj(part -> one(part, stages.get(part - 1))).toList();
    }

    private JobStage one(int part, Stage stage) {
        Optional<JobBill> bill = bills.all().stream().filter(each -> each.paper().part() == part)
                .reduce((earlier, later) -> later);
        State state = bill.map(this::state).orElse(State.OPEN);
        return new JobStage(part, stage.kind(), stage.share().value(),
                bill.filter(JobBill::isStanding).map(each -> each.paper().totals().gross()).orElse(stage.due()), state,
                bill.map(each -> each.issued().number()), isReady(stage, state));
    }

    private State state(JobBill bill) {
        if (!bill.isStanding()) {
            return State.REFUNDED;
        }
        if (JobBills.user(open, bill.issued().number(), ofWork).isPresent()) {
            return State.USED_UP;
        }
        if (job.state() instanceof JobState.Withdrawn) {
            return State.DUE_BACK;
        }
        return bill.isPaid(open) ? State.PAID : State.INVOICED;
    }

    private boolean isReady(Stage stage, State state) {
        if ((state != State.OPEN && state != State.REFUNDED) || job.state() instanceof JobState.Withdrawn) {
            return false;
        }
        return stage.kind() == Stage.Kind.RELEASE
                ? job.state() instanceof JobState.Done
                        && bills.standing().anyMatch(bill -> bill.paper().stage().held().isPositive())
                : ofWork.isEmpty();
    }
}
