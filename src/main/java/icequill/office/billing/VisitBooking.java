package icequill.office.billing;

import icequill.answer.RecordedVisit;
import icequill.files.form.Form;
import icequill.files.form.FormKind;
import icequill.ledger.Reading;
import icequill.ledger.Transaction;
import icequill.ledger.entries.VisitEntry;
import icequill.ledger.entries.Withdrawal;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.shop.EntryId;
import icequill.shop.ShopBook;
import icequill.visits.VisitContext;
import java.util.Optional;

/** Puts priced visits into the book, done or planned. */
public record VisitBooking(ShopBook book) {

    /** A priced visit that may stand in a book. */
    public record Bookable(Form form, VisitContext hand) {

        private boolean isPlanned() {
            return form.kind().filter(kind -> kind == FormKind.PLANNED_VISIT).isPresent();
        }

        /** As the book is to hold it. */
        public VisitEntry entry() {
            return new VisitEntry(hand.visit().id(), hand.site().id(), hand.visit().began(), hand.visit().ended(),
                    hand.visit().order().purchaseOrder(), isPlanned(), form.data());
        }
    }

    /** A visit that could be billed once it is done; one that was done is vouched for, and is over. */
    public Validated<Bookable> bookable(Form form, VisitContext hand) {
        Bookable visit = new Bookable(form, hand);
        Problems problems = new Problems();
        EntryId.problem(hand.visit().id(), hand.visit().place()).ifPresent(problems::add);
        if (visit.isPlanned() && hand.visit().sale().isPresent()) {
            problems.add(Code.NOT_ALLOWED, hand.visit().place(), "a sale is planned", "form: sale, once it is made");
        }
        if (!visit.isPlanned()) {
            problems.take(hand.vouched());
            problems.addAll(new IssueDates(book).stillToCome(hand.visit().id(), hand.visit().ended()).list());
        }
        return problems.or(() -> visit);
    }

    /** New, or in place of what is known of it, as long as that is not billed. */
    public Validated<RecordedVisit> store(Bookable visit, Transaction open) {
        VisitEntry entry = visit.entry();
        Optional<VisitEntry> before = open.entries().visit(entry.id()).found();
        Problems problems = visit.isPlanned()
                ? new Problems()
                : new SamePeople(book, open).problems(visit.hand().visit());
        if (!visit.isPlanned()) {
            problems.addAll(DiagnosesTakenOff.problems(open, visit.hand().visit()));
        }
        Validated<VisitEntry> done = problems.or(() -> entry)
                .then(alone -> AnsweredCalls.in(open, visit.hand().shop())
                        .stored(visit.hand(), visit.isPlanned(), before))
                .then(alone -> before.isEmpty()
                        ? open.register().record(entry)
                        : standing(open, before.get()).then(known -> known.data().equals(entry.data())
                                && known.isPlanned() == entry.isPlanned()
                                        ? Validated.valid(entry)
                                        : open.register().change(entry)));
        return done.map(recorded -> RecordedVisit.of(visit.hand(), visit.isPlanned()));
    }

    /** A visit that was not withdrawn. */
    static Validated<VisitEntry> standing(Reading open, VisitEntry entry) {
        Optional<Withdrawal> withdrawal = open.entries().withdrawal(entry.id());
        return withdrawal.isEmpty()
                ? Validated.valid(entry)
                : Validated
                        .invalid(
                                new Problem(Code.NOT_ALLOWED, Place.NOWHERE, withdrawal.get().told("visit", entry.id()),
                                        "a visit that stands; record it under another id to bill it"));
    }
}
