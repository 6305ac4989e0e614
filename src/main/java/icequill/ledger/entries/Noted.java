package icequill.ledger.entries;

import icequill.ledger.trail.Subject;
import icequill.ledger.trail.Trail;
import icequill.ledger.trail.TrailEvent;

/** What the trail is to tell of a change. */
record Noted(Subject subject, String entry, TrailEvent event) {

    static Noted of(CustomerEntry customer, TrailEvent event) {
        return new Noted(Subject.CUSTOMER, customer.id(), event);
    }

    static Noted of(SiteEntry site, TrailEvent event) {
        return new Noted(Subject.SITE, site.id(), event);
    }

    static Noted of(MachineEntry machine, TrailEvent event) {
        return new Noted(Subject.MACHINE, Subject.part(machine.site(), machine.id()), event);
    }

    static Noted of(VisitEntry visit, TrailEvent event) {
        return new Noted(Subject.VISIT, visit.id(), event);
    }

    static Noted of(AgreementEntry agreement, TrailEvent event) {
        return new Noted(Subject.AGREEMENT, agreement.id(), event);
    }

    static Noted of(RequestEntry request, TrailEvent event) {
        return new Noted(Subject.REQUEST, Subject.part(request.kind(), request.id()), event);
    }

    static Noted of(PaymentEntry payment, TrailEvent event) {
        return new Noted(Subject.PAYMENT, payment.id(), event);
    }

    static Noted of(AccountEntry account, TrailEvent event) {
        return new Noted(Subject.ACCOUNT, account.customer(), event);
    }

    static Noted of(LifeStep step, TrailEvent event) {
        return new Noted(Subject.STEP, Subject.part(Subject.part(step.kind(), step.id()),
                String.valueOf(step.position())), event);
    }

    /** Makes the change, and leaves the trail of it. */
    void in(Trail trail, Runnable change) {
        trail.note(subject, entry, event, change);
    }
}
