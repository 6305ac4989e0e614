package icequill.office.agreement;

import icequill.agreement.Installment;
import icequill.agreement.NearestDay;
import icequill.agreement.PlannedVisit;
import icequill.agreement.SentNotice;
import icequill.answer.agreement.AgreementAnswer;
import icequill.answer.agreement.AgreementAnswer.AgreementChange;
import icequill.answer.agreement.AgreementAnswer.AgreementStep;
import icequill.answer.agreement.AgreementAnswer.Calls;
import icequill.answer.agreement.AgreementAnswer.DueVisit;
import icequill.answer.agreement.AgreementAnswer.KnownMachine;
import icequill.answer.agreement.AgreementAnswer.OfSite;
import icequill.answer.agreement.AgreementAnswer.Payment;
import icequill.answer.agreement.AgreementSheet;
import icequill.answer.agreement.Moved;
import icequill.answer.agreement.MovedLine;
import icequill.explain.ConstantKey;
import icequill.explain.Phrase;
import icequill.ledger.Reading;
import icequill.ledger.papers.IssuedPaper;
import icequill.life.agreement.AgreementEvent;
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
import icequill.life.agreement.NoticeWay;
import icequill.office.billing.StandingInvoices;
import icequill.party.Machine;
import icequill.party.Site;
import icequill.plans.AgreementAtSite;
import icequill.render.words.Sentences;
import icequill.request.AgreementRequest;
import icequill.request.AgreementRequest.Part;
import icequill.shop.AgreementsInForce;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Tells an agreement of the book in the language of the reader. */
record AgreementTelling(HeldAgreement held, Reading open, Sentences sentences, LocalDate today) {

    AgreementSheet sheet() {
        AgreementRequest request = held.request();
        Site site = held.hand().site();
        return new AgreementSheet(new AgreementAnswer(request.number(), held.entry().id(), held.stage(today), site.id(),
                site.name(), held.owner(open),
                site.customer().name(), request.tier().id(), sentences.in(held.hand().first().plan().tier().name()),
                request.firstDay(), request.scope().term().lastDay(), request.renewal().terms().goingOn(),
                held.lastDay(), request.renewal().terms().lastDayToRefuse(), request.cancelDays(),
                request.orders().on(today),
                held.yearPrice(),
                held.hand().sites().stream().map(this::site).toList(), payments(),
                held.hand().sites().stream().flatMap(this::visits).sorted(Comparator.comparing(DueVisit::day)).toList(),
                held.hand().sites().stream().flatMap(this::changes)
                        .sorted(Comparator.comparing(AgreementChange::from)).toList(),
                held.steps().events().stream().map(this::step).toList(),
                open.papers().ofAgreement(request.number()).stream().map(IssuedPaper::number).toList()), sentences);
    }

    private OfSite site(AgreementAtSite state) {
        Site site = state.setting().whole();
        Set<String> last = state.request().machines(site, state.request().scope().term().lastDay());
        AgreementRequest request = state.request();
        return new OfSite(site.id(), site.name(), request.part().flatMap(Part::from), request.lastDayHere(),
                List.copyOf(request.machines(site, today)),
                site.machines().stream().map(machine -> new KnownMachine(machine.id(), machine.where(),
                        last.contains(machine.id()))).toList(),
                calls(state));
    }

    /** Of the year of the term that today is in, or that is nearest to it. */
    private Optional<Calls> calls(AgreementAtSite state) {
        AgreementRequest request = state.request();
        LocalDate first = request.firstDay();
        LocalDate begun = today.isBefore(first) ? first : today;
        LocalDate day = held.lastDay().filter(begun::isAfter).orElse(begun);
        return request.isHere(day) ? calls(state, day) : Optional.empty();
    }

    private Optional<Calls> calls(AgreementAtSite state, LocalDate day) {
        return new AgreementsInForce(held.shop())
                .calls(state.request(), state.plan().tier(), state.setting().whole(), day)
                .map(calls -> new Calls(calls.included(), calls.from(), calls.until(), calls.visits(), calls.left()));
    }

    private List<Payment> payments() {
        Map<Integer, String> billed = StandingInvoices.byPayment(open, held.request().number());
        return held.hand().payments().stream()
                .filter(payment -> billed.containsKey(payment.number()) || held.hand().isPayable(payment))
                .map(payment -> payment(payment, Optional.ofNullable(billed.get(payment.number())))).toList();
    }

    private Payment payment(Installment payment, Optional<String> invoice) {
        return new Payment(payment.number(), payment.due(), payment.amount(), held.hand().givenBack(payment.number()),
                invoice);
    }

    private Stream<DueVisit> visits(AgreementAtSite state) {
        Site site = state.setting().whole();
        Map<LocalDate, String> done = new HashMap<>();
        held.visits().getOrDefault(site.id(), List.of()).forEach(visit -> NearestDay
                .of(state.plan().calendar().visits(), PlannedVisit::date, visit.began().toLocalDate())
                .ifPresent(slot -> done.putIfAbsent(slot.date(), visit.id())));
        return state.calendar().visits().stream().map(slot -> new DueVisit(slot.date(), site.id(),
                sentences.in(slot.slot().name()), Optional.ofNullable(done.get(slot.date())),
                !done.containsKey(slot.date()) && slot.date().isBefore(today)));
    }

    private Stream<AgreementChange> changes(AgreementAtSite state) {
        return state.changes().stream().map(change -> new AgreementChange(change.price().from(),
                moved(state, change.price().from(), change.added(), change.removed()), change.price().amount(),
                sentences.formula(change.price().how().figure())));
    }

    /** What comes in or goes out at a site on a day. */
    static Moved moved(AgreementAtSite state, LocalDate day, List<String> added, List<String> removed) {
        Site site = state.setting().whole();
        AgreementRequest request = state.request();
        boolean comes = request.part().flatMap(Part::from).filter(day::equals).isPresent();
        boolean goes = request.lastDayHere().filter(last -> last.plusDays(1).equals(day)).isPresent();
        return new Moved(comes ? Moved.What.SITE_IN : goes ? Moved.What.SITE_OUT : Moved.What.MACHINES, site.id(),
                site.name(), added, removed);
    }

    private AgreementStep step(AgreementEvent event) {
        return switch (event) {
        case Notice notice -> new AgreementStep(notice.day(), sentences.word(
                "agreed.noticed-by-" + ConstantKey.of(notice.by()), way(notice.way()), who(notice.who()),
                sentences.formats().day(notice.lastDay())), notice.words());
        case Refusal refusal -> new AgreementStep(refusal.day(),
                sentences.word("agreed.refused", way(refusal.way()), who(refusal.who())), refusal.words());
        case Told(SentNotice sent) -> new AgreementStep(sent.sent(), sentences.word("agreed.told",
                sentences.say(Phrase.of("renewal.law", sent.way().word())),
                Stream.of(sent.paper(), sent.tracking(), sent.by()).flatMap(Optional::stream)
                        .map(text -> ", " + text).collect(Collectors.joining())),
                Optional.empty());
        case Arrived(LocalDate day) -> new AgreementStep(day, sentences.word("agreed.arrived"), Optional.empty());
        case CameBack(LocalDate day, String tracking) ->
            new AgreementStep(day, sentences.word("agreed.came-back", tracking), Optional.empty());
        case Renewal renewal -> new AgreementStep(renewal.day(),
                sentences.word("agreed.renewed", renewal.next()) + who(renewal.who()), Optional.empty());
        case Begun(LocalDate day, String before) ->
            new AgreementStep(day, sentences.word("agreed.begun", before), Optional.empty());
        case Transfer transfer -> new AgreementStep(transfer.day(), sentences.word("agreed.transferred",
                transfer.next(), sentences.formats().day(transfer.from()), who(transfer.who())), transfer.words());
        case TakenOver(LocalDate day, String before) ->
            new AgreementStep(day, sentences.word("agreed.taken-over", before, sentences.formats().day(day)),
                    Optional.empty());
        case Changed changed -> changed(changed, changed.from(), new Moved(Moved.What.MACHINES, changed.site(),
                name(changed.site()), where(changed.added(), changed.site()),
                where(changed.removed(), changed.site())), changed.who(), changed.words());
        case SiteIn coming -> changed(coming, coming.from(), new Moved(Moved.What.SITE_IN, coming.site(),
                name(coming.site()), where(coming.machines(), coming.site()), List.of()), coming.who(), coming.words());
        case SiteOut going -> changed(going, going.from(), new Moved(Moved.What.SITE_OUT, going.site(),
                name(going.site()), List.of(), List.of()), going.who(), going.words());
        case Ordered(LocalDate day, LocalDate from, Optional<String> number, Optional<String> who) ->
            new AgreementStep(day, number
                    .map(order -> sentences.word("agreed.ordered", order, sentences.formats().day(from), who(who)))
                    .orElseGet(() -> sentences.word("agreed.ordered-none", sentences.formats().day(from), who(who))),
                    Optional.empty());
        };
    }

    private AgreementStep changed(AgreementEvent event, LocalDate from, Moved moved, Optional<String> who,
            Optional<String> words) {
        return new AgreementStep(event.day(), sentences.word("agreed.changed-from", sentences.formats().day(from),
                new MovedLine(sentences, held.hand().isOverSeveralSites()).of(moved), who(who)), words);
    }

    private String name(String site) {
        return held.at(site).setting().whole().name();
    }

    /** Where machines stand, or their ids where that is not known any more. */
    private List<String> where(List<String> machines, String site) {
        return machines.stream().map(id -> held.at(site).setting().whole().machine(id).map(Machine::where).orElse(id))
                .toList();
    }

    private String way(NoticeWay way) {
        return sentences.word("notice-way." + ConstantKey.of(way));
    }

    private static String who(Optional<String> name) {
        return name.map(known -> ", " + known).orElse("");
    }
}
