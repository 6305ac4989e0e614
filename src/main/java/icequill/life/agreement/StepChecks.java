package icequill.life.agreement;

import icequill.life.agreement.AgreementEvent.Arrived;
import icequill.life.agreement.AgreementEvent.Begun;
import icequill.life.agreement.AgreementEvent.CameBack;
import icequill.life.agreement.AgreementEvent.Changed;
import icequill.life.agreement.AgreementEvent.Notice;
import icequill.life.agreement.AgreementEvent.Ordered;
import icequill.life.agreement.AgreementEvent.Refusal;
import icequill.life.agreement.AgreementEvent.Renewal;
import icequill.life.agreement.AgreementEvent.SiteIn;
import icequill.life.agreement.AgreementEvent.SiteOut;
import icequill.life.agreement.AgreementEvent.TakenOver;
import icequill.life.agreement.AgreementEvent.Told;
import icequill.life.agreement.AgreementEvent.Transfer;
import icequill.life.agreement.AgreementTerms.AtSite;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problems;
import java.time.LocalDate;
import java.util.Optional;

/**
 * Whether what happens to an agreement keeps to its terms.
 *
 * @param problems where what does not is added
 */
record StepChecks(AgreementTerms terms, Problems problems) {

    /** What fits into the head of a paper. */
    private static final int LONGEST = 60;

    void of(AgreementEvent event) {
        switch (event) {
        case Notice notice -> check(notice);
        case Refusal refusal -> check(refusal);
        case Told told -> check(told);
        case Renewal renewal -> checkRenewal();
        case Changed changed -> check(changed);
        case SiteIn coming -> check(coming);
        case SiteOut going -> check(going);
        case Transfer transfer -> check(transfer);
        case Ordered ordered -> check(ordered);
        case Arrived arrived -> {
        }
        case Begun begun -> {
        }
        case CameBack back -> {
        }
        case TakenOver taken -> {
        }
        }
    }

    private void check(Notice notice) {
        LocalDate earliest = terms.earliestEnd(notice.day());
        LocalDate last = notice.lastDay();
        if (terms.termEnd().filter(last::isAfter).isPresent()) {
            problems.add(Code.OUT_OF_RANGE, at("lastDay"),
                    "it would end on " + last + ", but its term does on " + terms.termEnd().orElseThrow(),
                    "that it is not to go on after its term: a refusal");
        } else if (last.isBefore(earliest)) {
            problems.add(Code.OUT_OF_RANGE, at("lastDay"),
                    last + " is too early for a notice of " + notice.day(), earliest + " or a later day");
        } else if (last.isBefore(terms.start())) {
            problems.add(Code.OUT_OF_RANGE, at("lastDay"), "it begins on " + terms.start(), "that day or a later one");
        } else if (!terms.isMonthsEnd(last)) {
            problems.add(Code.OUT_OF_RANGE, at("lastDay"), "after its term it ends with one of its months",
                    "the end of one: " + terms.earliestEnd(notice.day()) + ", or of a later one");
        }
    }

    private void check(Refusal refusal) {
        LocalDate latest = terms.renewal().lastDayToRefuse();
        if (refusal.day().isAfter(latest)) {
            problems.add(Code.OUT_OF_RANGE, at("day"), "the last day to refuse was " + latest,
                    "a day up to that; after it, the notice that ends what it goes on by");
        }
    }

    private void check(Told told) {
        if (!told.day().isBefore(terms.renewal().begins())) {
            problems.add(Code.OUT_OF_RANGE, at("day"), "what it would go on as begins on " + terms.renewal().begins(),
                    "a day before that");
        }
    }

    private void checkRenewal() {
        if (terms.termEnd().isEmpty()) {
            problems.add(Code.NOT_ALLOWED, Place.NOWHERE, "it goes on by the month, by itself", "");
        }
    }

    private void check(Changed changed) {
        if (changed.added().isEmpty() && changed.removed().isEmpty()) {
            problems.add(Code.MISSING, at("add"), "no machine comes in or goes out", "one that does");
        }
        checkFirst(changed.from(), terms.changed(changed.site()));
    }

    private void check(SiteIn coming) {
        if (!terms.byTime()) {
            problems.add(Code.NOT_ALLOWED, at("site"),
                    "what is paid visit by visit, or by open months, is for one site",
                    "an agreement of its own for " + coming.site());
        }
        Optional.ofNullable(terms.sites().get(coming.site()))
                .ifPresent(known -> problems.add(Code.NOT_ALLOWED, at("site"), known.until()
                        .map(last -> coming.site() + " goes out on " + last.plusDays(1) + ", and comes in once at most")
                        .orElseGet(() -> coming.site() + " is a site of this agreement already"),
                        "another site, or another agreement for it"));
        checkFirst(coming.from(), Optional.empty());
    }

    private void check(SiteOut going) {
        Optional<LocalDate> gone = Optional.ofNullable(terms.sites().get(going.site())).flatMap(AtSite::until);
        if (gone.isPresent()) {
            problems.add(Code.NOT_ALLOWED, at("site"),
                    going.site() + " goes out on " + gone.get().plusDays(1) + " already", "a site that stays");
            return;
        }
        if (!terms.isLeft(going.site(), going.from())) {
            problems.add(Code.NOT_ALLOWED, at("site"),
                    "no other site is part of it from " + going.from() + " to its end",
                    "the end of the agreement: icequill agreement end");
        }
        checkFirst(going.from(), terms.changed(going.site()));
    }

    private void check(Transfer transfer) {
        checkFirst(transfer.from(), terms.changed());
    }

    /** That what begins in mid-term does so within it, and after the last change by which prices are known. */
    private void checkFirst(LocalDate from, Optional<LocalDate> changed) {
        LocalDate last = terms.renewal().term().lastDay();
        if (!from.isAfter(terms.start()) || from.isAfter(last)) {
            problems.add(Code.OUT_OF_RANGE, at("from"), from + " is not within the term after its first day",
                    "a day from " + terms.start().plusDays(1) + " to " + last);
        } else {
            changed.filter(before -> !from.isAfter(before)).ifPresent(before -> problems.add(Code.WRONG_ORDER,
                    at("from"), from + " does not come after the change of " + before + ", by which prices are known",
                    "a day from " + before.plusDays(1) + " to " + last));
        }
    }

    private void check(Ordered ordered) {
        if (ordered.number().filter(number -> number.isBlank() || number.length() > LONGEST).isPresent()) {
            problems.add(Code.OUT_OF_RANGE, at("order"), "a purchase order has 1 to " + LONGEST + " letters and digits",
                    "its number, or none at all");
        }
        if (ordered.from().isBefore(terms.start())) {
            problems.add(Code.OUT_OF_RANGE, at("from"), "it begins on " + terms.start(), "that day or a later one");
        }
    }

    private static Place at(String field) {
        return new Place("", 0, field);
    }
}
