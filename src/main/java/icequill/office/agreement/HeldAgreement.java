package icequill.office.agreement;

import icequill.agreement.MonthByMonth;
import icequill.ledger.Reading;
import icequill.ledger.entries.AgreementEntry;
import icequill.ledger.entries.VisitEntry;
import icequill.life.agreement.AgreementStage;
import icequill.life.agreement.AgreementTerms;
import icequill.office.billing.InvoicedPayments;
import icequill.office.billing.SlotVisits;
import icequill.plans.AgreementAtSite;
import icequill.plans.WholeAgreement;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.request.AgreementRequest;
import icequill.shop.AgreementLoader;
import icequill.shop.BookForms;
import icequill.shop.FormName;
import icequill.shop.ShopBook;
import icequill.shop.ShopFolder;
import icequill.shop.UnknownName;
import icequill.shop.steps.AgreementSteps;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.money.MonetaryAmount;

/**
 * An agreement of the book, priced, with what happened to it and which visits were done at its sites.
 *
 * @param shop by which it was priced
 * @param visits by the id of the site
 */
record HeldAgreement(AgreementEntry entry, ShopFolder shop, WholeAgreement hand, AgreementSteps steps,
        Map<String, List<VisitEntry>> visits) {

    /**
     * One that is named.
     *
     * @param name its id or number
     * @param day as of which it is priced
     */
    static Validated<HeldAgreement> of(ShopBook book, String name, LocalDate day) {
        return book.read(open -> entry(open, name)).then(entry -> {
            ShopFolder shop = BookForms.shop(book);
            return new AgreementLoader(shop, new InvoicedPayments(book)::whatever)
                    .of(new FormName.InBook(entry.id()), day)
                    .then(hand -> book.read(open -> Validated.valid(new HeldAgreement(entry, shop, hand,
                            BookForms.steps(open, entry.number()), visits(open, hand)))));
        });
    }

    private static Validated<AgreementEntry> entry(Reading open, String name) {
        return open.entries().agreement(name).filter(entry -> !entry.isForgotten()).map(Validated::valid)
                .orElseGet(() -> Validated.invalid(UnknownName.name("agreement", name,
                        open.entries().agreements().stream()
                                .flatMap(entry -> Stream.of(entry.id(), entry.number())).toList(),
                        "see: icequill agreement list")));
    }

    private static Map<String, List<VisitEntry>> visits(Reading open, WholeAgreement hand) {
        return hand.request().sites().stream().collect(Collectors.toMap(site -> site.scope().site(),
                site -> SlotVisits.done(open, site)));
    }

    /** The same, unless nobody accepted it, or somebody took a step since it was looked at. */
    Validated<HeldAgreement> accepted(Optional<Integer> seen) {
        if (request().accepted().isEmpty()) {
            return Validated.invalid(new Problem(Code.NOT_ALLOWED, Place.NOWHERE,
                    "nobody accepted " + request().number() + " yet", "an agreement that was accepted"));
        }
        return seen.filter(count -> count != steps.steps().size()).isPresent()
                ? Validated.invalid(new Problem(Code.CHANGED_MEANWHILE, Place.NOWHERE,
                        "agreement " + request().number() + " was changed by somebody else since this page was shown",
                        "look at it anew"))
                : Validated.valid(this);
    }

    AgreementRequest request() {
        return hand.request();
    }

    /** The customer whose agreement it is, by id; blank where the book does not know any more. */
    String owner(Reading open) {
        return open.entries().siteNow(entry.site()).found()
                .map(site -> BookForms.owner(open, site, request().firstDay())).orElse("");
    }

    /** It as it stands at one of its sites, by id. */
    AgreementAtSite at(String site) {
        return hand.sites().stream().filter(state -> state.request().scope().site().equals(site)).findFirst()
                .orElseThrow();
    }

    /** Of a year, before tax, after all changes. */
    MonetaryAmount yearPrice() {
        return hand.sites().stream().map(AgreementAtSite::currentYearPrice).reduce(MonetaryAmount::add).orElseThrow();
    }

    /** Where it stands on a day; a form of earlier books may hold the notice itself. */
    AgreementStage stage(LocalDate day) {
        if (request().accepted().isEmpty()) {
            return AgreementStage.DRAFTED;
        }
        AgreementStage stage = steps.state().on(day, terms());
        return request().renewal().noticed().isEmpty() || stage != AgreementStage.IN_FORCE
                ? stage
                : request().isInForce(day) ? AgreementStage.NOTICE_GIVEN : AgreementStage.ENDED_BY_NOTICE;
    }

    /** As far as it is known. */
    Optional<LocalDate> lastDay() {
        return steps.state().lastDay(terms()).or(() -> request().byMonth().flatMap(MonthByMonth::lastDay));
    }

    AgreementTerms terms() {
        return AgreementSteps.terms(request());
    }

    /** The days of its visits, by the id of the site. */
    Map<String, List<LocalDate>> doneDays() {
        return visits.entrySet().stream().collect(Collectors.toMap(Map.Entry::getKey,
                site -> site.getValue().stream().map(visit -> visit.began().toLocalDate()).toList()));
    }

    /** The same before a day. */
    Map<String, List<LocalDate>> doneBefore(LocalDate day) {
        return doneDays().entrySet().stream().collect(Collectors.toMap(Map.Entry::getKey,
                site -> site.getValue().stream().filter(visit -> visit.isBefore(day)).toList()));
    }
}
