package icequill.office.call;

import icequill.account.Ageing;
import icequill.account.Owed;
import icequill.answer.call.AtHand;
import icequill.answer.call.AtHand.Hold;
import icequill.answer.call.AtHand.MachineAtHand;
import icequill.answer.call.AtHand.Promise;
import icequill.answer.call.AtHand.RepairAtHand;
import icequill.answer.call.AtHandSheet;
import icequill.answer.call.CallRow;
import icequill.answer.history.VisitRow;
import icequill.answer.history.VisitState;
import icequill.ledger.Reading;
import icequill.ledger.entries.SiteEntry;
import icequill.office.care.AskedPeriod;
import icequill.office.care.HistoryOffice;
import icequill.office.care.VisitListOffice;
import icequill.office.care.VisitWish;
import icequill.office.register.RegisterOffice;
import icequill.papers.AccountSnapshot;
import icequill.party.Contact;
import icequill.party.Language;
import icequill.party.Machine;
import icequill.party.Site;
import icequill.problem.Place;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.rates.Rates;
import icequill.render.words.MachineName;
import icequill.render.words.Sentences;
import icequill.shop.AccountLoader;
import icequill.shop.AgreementsInForce;
import icequill.shop.BookForms;
import icequill.shop.BookedCalls;
import icequill.shop.FormName;
import icequill.shop.ShopBook;
import icequill.shop.ShopFolder;
import icequill.shop.life.OpenRepairs;
import icequill.visits.AgreementInForce;
import icequill.visits.CountedCalls;
import icequill.visits.PromisedResponse;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What is at hand of a site at the moment of a call.
 *
 * @param folder one reading of the shop
 * @param now in the zone of the shop
 */
record CallDesk(ShopBook book, ShopFolder folder, Sentences sentences, ZonedDateTime now) {

    private static final int LAST_VISITS = 3;

    /** The same where the shop can be read. */
    static Validated<CallDesk> of(ShopBook book, Optional<Language> language) {
        ShopFolder folder = BookForms.shop(book);
        return HistoryOffice.sentences(folder, language).map(sentences -> new CallDesk(book, folder, sentences,
                book.clock().instant().atZone(folder.shop().orElseThrow().zone())));
    }

    /** The agreements of a site on the day of a call, each with what it promises for it. */
    record Agreement(AgreementInForce inForce, Optional<PromisedResponse> promise) {}

    Validated<Site> site(String id) {
        return book.read(open -> RegisterOffice.found(open, id)).then(entry -> folder.site(id, Place.NOWHERE)
                .map(Validated::valid).orElseGet(() -> new Validated.Invalid<>(folder.problems())));
    }

    /**
     * What is promised of whom.
     *
     * @param machine that the call is about; empty where that is not known
     * @param beyond what is wrong with rates and plans is added here
     */
    List<Agreement> agreements(Site site, ZonedDateTime called, Optional<String> machine, Problems beyond) {
        Optional<Rates> rates = folder.schedule()
                .flatMap(schedule -> beyond.take(schedule.asOf(called.toLocalDate(), Optional.of(site))));
        return new AgreementsInForce(folder).of(site, called.toLocalDate(), beyond).stream()
                .map(found -> new Agreement(found,
                        rates.flatMap(today -> found.response(called, today, machine))))
                .toList();
    }

    /** The soonest that any of them promises. */
    static Optional<PromisedResponse> soonest(List<Agreement> agreements) {
        return agreements.stream().flatMap(found -> found.promise().stream())
                .min(Comparator.comparing(promise -> promise.by().toInstant()));
    }

    /** All that is at hand. What cannot be worked out keeps nobody from taking the call. */
    Validated<AtHandSheet> atHand(String id, Optional<Language> language) {
        return site(id).then(site -> book.read(open -> {
            Problems notices = new Problems();
            SiteEntry entry = open.entries().site(id).orElseThrow();
            List<Promise> promises = agreements(site, now, Optional.empty(), notices).stream().map(this::promise)
                    .toList();
            List<CallRow> waiting = notices.take(new BookedCalls(folder.shop().orElseThrow(), open).at(id)).stream()
                    .flatMap(List::stream).map(call -> CallRow.of(call, site.name(), now))
                    .filter(row -> row.stage().isWaiting())
                    .sorted(Comparator.comparing((CallRow row) -> row.at().toInstant()).reversed()).toList();
            Optional<Hold> hold = open.accounts().payer(entry.customer()).found()
                    .flatMap(payer -> notices.take(new AccountLoader(book).of(new FormName.InBook(payer.id()),
                            now.toLocalDate())))
                    .flatMap(CallDesk::hold);
            return Validated.valid(new AtHandSheet(new AtHand(id, site.name(), entry.customer(),
                    site.customer().name(), now, callers(site), machines(site), promises,
                    lastVisits(id, language, notices), waiting, repairs(open, id), hold, approver(site),
                    notices.list()), sentences));
        }));
    }

    private Promise promise(Agreement found) {
        Optional<PromisedResponse> promised = found.promise();
        return new Promise(found.inForce().number(), sentences.in(found.inForce().tier().name()),
                promised.map(promise -> sentences.in(promise.band().name())), promised.map(PromisedResponse::hours),
                promised.map(PromisedResponse::by), found.inForce().calls().map(CountedCalls::included),
                found.inForce().calls().map(CountedCalls::left));
    }

    private List<VisitRow> lastVisits(String site, Optional<Language> language, Problems notices) {
        VisitWish wish = new VisitWish(Optional.of(site), Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.empty(), false, AskedPeriod.EVER,
                Set.of(VisitState.DONE, VisitState.BILLED), LAST_VISITS);
        return notices.take(VisitListOffice.of(book).visits(wish, language)).map(sheet -> sheet.data().visits())
                .orElse(List.of());
    }

    private List<RepairAtHand> repairs(Reading open, String site) {
        return new OpenRepairs(folder, open).at(site).stream().map(OpenRepairs.One::repair)
                .map(repair -> new RepairAtHand(repair.day(), repair.machine(), repair.text(), repair.isWanted()))
                .toList();
    }

    private List<MachineAtHand> machines(Site site) {
        return site.machines().stream().sorted(Comparator.comparing(Machine::where))
                .map(machine -> new MachineAtHand(machine.id(), new MachineName(machine, sentences).text())).toList();
    }

    private static List<String> callers(Site site) {
        return Stream.concat(site.contacts().people().stream(), site.customer().contacts().people().stream())
                .map(Contact::name).distinct().toList();
    }

    private static Optional<String> approver(Site site) {
        return site.contactFor(Contact.Purpose.APPROVALS)
                .map(contact -> Stream.concat(Stream.of(contact.name()), contact.telephone().stream())
                        .collect(Collectors.joining(", ")));
    }

    /** Past due by the customer's account; what he disputes of it is open too. */
    private static Optional<Hold> hold(AccountSnapshot account) {
        List<Owed> late = account.standing().owed().stream().filter(Owed::isPastDue).toList();
        return late.isEmpty()
                ? Optional.empty()
                : Optional.of(new Hold(
                        Ageing.of(late, Ageing.USUAL, account.standing().currency()).late(), late.size(),
                        late.stream().map(Owed::due).min(Comparator.<LocalDate>naturalOrder()).orElseThrow()));
    }
}
