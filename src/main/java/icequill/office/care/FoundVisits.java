package icequill.office.care;

import icequill.answer.history.Period;
import icequill.answer.history.VisitState;
import icequill.files.form.VisitNames;
import icequill.ledger.Reading;
import icequill.ledger.entries.VisitEntry;
import icequill.ledger.entries.VisitQuestion;
import icequill.ledger.entries.Withdrawal;
import icequill.ledger.papers.IssuedPaper;
import icequill.office.billing.StandingInvoices;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The visits of the book, each with where it is in its life. A list of a site and its history are of the same ones. */
record FoundVisits(Reading open, Map<String, Withdrawal> withdrawals) {

    /** As long as there is anything. */
    static final Period EVER = new Period(Optional.empty(), Optional.empty());

    static FoundVisits in(Reading open) {
        return new FoundVisits(open, open.entries().withdrawals());
    }

    /**
     * A visit.
     *
     * @param papers that were issued for it, in the order of issue
     */
    record One(VisitEntry entry, VisitState state, Optional<Withdrawal> withdrawal, List<IssuedPaper> papers) {

        List<String> invoices() {
            return StandingInvoices.among(papers).stream().map(IssuedPaper::number).toList();
        }
    }

    /** By their beginning, whatever became of them. */
    List<VisitEntry> entries(VisitScope scope, Period period) {
        if (scope.sites().filter(Set::isEmpty).isPresent()) {
            return List.of();
        }
        return open.entries()
                .visits(new VisitQuestion(scope.sites().map(List::copyOf).orElse(List.of()), period.from(),
                        period.until()))
                .stream()
                .filter(entry -> scope.machine().isEmpty()
                        || VisitNames.of(entry.data()).machines().contains(scope.machine().get()))
                .toList();
    }

    /** With what was issued for them. */
    List<One> of(List<VisitEntry> entries) {
        Map<String, List<IssuedPaper>> papers = open.papers()
                .ofVisits(entries.stream().map(VisitEntry::id).toList());
        return entries.stream().map(entry -> one(entry, papers.getOrDefault(entry.id(), List.of()))).toList();
    }

    private One one(VisitEntry entry, List<IssuedPaper> papers) {
        Optional<Withdrawal> withdrawal = Optional.ofNullable(withdrawals.get(entry.id()));
        VisitState state = withdrawal.isPresent()
                ? VisitState.WITHDRAWN
                : entry.isPlanned()
                        ? VisitState.PLANNED
                        : StandingInvoices.among(papers).isEmpty() ? VisitState.DONE : VisitState.BILLED;
        return new One(entry, state, withdrawal, papers);
    }
}
