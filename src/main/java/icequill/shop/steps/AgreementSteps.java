package icequill.shop.steps;

import icequill.agreement.Billing;
import icequill.agreement.NoticeRule;
import icequill.agreement.PaymentChange.Back;
import icequill.agreement.PaymentChange.GivenBack;
import icequill.agreement.SentNotice;
import icequill.ledger.entries.LifeStep;
import icequill.ledger.store.DamagedRow;
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
import icequill.life.agreement.AgreementState;
import icequill.life.agreement.AgreementTerms;
import icequill.life.agreement.AgreementTerms.AtSite;
import icequill.life.agreement.NoticeBy;
import icequill.life.agreement.NoticeWay;
import icequill.money.Amounts;
import icequill.problem.Place;
import icequill.request.AgreementRequest;
import icequill.request.AgreementRequest.Ended;
import icequill.request.StandingOrders;
import icequill.work.Visit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.money.CurrencyUnit;

/**
 * What happened to an agreement since it was accepted.
 *
 * @param number of the agreement, by which its steps are called
 * @param steps in their order
 */
public record AgreementSteps(String number, List<LifeStep> steps) {

    /** The kind of these steps. */
    public static final String KIND = "AGREEMENT";

    private static final String LAST_DAY = "lastDay";
    private static final String BY = "by";
    private static final String WAY = "way";
    private static final String WHO = "who";
    private static final String WORDS = "words";
    private static final String PAPER = "paper";
    private static final String TRACKING = "tracking";
    private static final String NEXT = "next";
    private static final String BEFORE = "before";
    private static final String FROM = "from";
    private static final String ORDER = "order";
    /** Ids with a space between, which no id has. */
    private static final String ADD = "add";
    private static final String REMOVE = "remove";
    /** Then the number of a payment and the id of a site: an agreement's payments are few, and ids have no space. */
    private static final String BACK = "back ";
    /** The same of a payment that was still to be billed. */
    private static final String LESS = "less ";
    /** Then the id of a site: the day of its first visit that goes over to a new owner, or on which a visit may be one of the next term. */
    private static final String VISIT = "visit ";

    private enum Event {
        NOTICE, REFUSAL, TOLD, ARRIVED, CAME_BACK, RENEWED, BEGUN, CHANGED, SITE_IN, SITE_OUT, ORDERED, TRANSFERRED,
        TAKEN_OVER
    }

    public AgreementSteps {
        steps = List.copyOf(steps);
    }

    /** By what an agreement may be changed and ended. */
    public static AgreementTerms terms(AgreementRequest request) {
        return new AgreementTerms(request.renewal().terms(), request.firstDay(), request.cancelDays(),
                request.scope().billing().filter(billing -> billing != Billing.OPEN_MONTHS).isPresent(),
                request.sites().stream().collect(Collectors.toMap(site -> site.scope().site(), AgreementSteps::at)));
    }

    private static AtSite at(AgreementRequest site) {
        return new AtSite(
                site.changes().isEmpty() ? Optional.empty() : Optional.of(site.changes().getLast().from()),
                site.part().flatMap(AgreementRequest.Part::from), site.lastDayHere());
    }

    /** The numbers of agreements that a site came into, by what happened there. */
    public static Set<String> cameInto(List<LifeStep> stepsAtSite) {
        return stepsAtSite.stream().filter(step -> step.kind().equals(KIND)
                && step.event().equals(Event.SITE_IN.name())).map(LifeStep::id).collect(Collectors.toSet());
    }

    /** Where it stands. */
    public AgreementState state() {
        return LifeStep.led("agreement", AgreementState.begun(), steps,
                (before, step) -> AgreementState.told(before, event(step)));
    }

    /** What happened, in its order. */
    public List<AgreementEvent> events() {
        return steps.stream().map(AgreementSteps::event).toList();
    }

    /** As it is after what happened to it. */
    public AgreementRequest after(AgreementRequest asked, CurrencyUnit currency) {
        AgreementRequest request = changed(asked);
        return switch (state()) {
        case AgreementState.InForce running -> request;
        case AgreementState.Renewed renewed -> request;
        case AgreementState.Refused refused ->
            request.ending(new Ended(request.renewal().terms().term().lastDay(), Map.of()));
        case AgreementState.Noticed(Notice notice) ->
            request.ending(new Ended(notice.lastDay(), givenBack(step(notice), currency)));
        case AgreementState.Transferred(Transfer transfer) -> request.ending(new Ended(transfer.from().minusDays(1),
                givenBack(step(transfer), currency), goingOver(step(transfer))));
        };
    }

    private LifeStep step(AgreementEvent told) {
        return steps.stream().filter(step -> event(step).equals(told)).findFirst().orElseThrow();
    }

    /** Whether a visit of a day may be one of its calendar, and not of the term before, or of the one that it was renewed for. */
    public boolean mayHave(String site, LocalDate visit) {
        return steps.stream().allMatch(step -> {
            Optional<LocalDate> next = Optional.ofNullable(goingOver(step).get(site));
            return switch (event(step)) {
            case Renewal renewal -> next.filter(first -> !visit.isBefore(first)).isEmpty();
            case Begun begun -> next.filter(visit::isBefore).isEmpty();
            default -> true;
            };
        });
    }

    private static Map<String, LocalDate> goingOver(LifeStep step) {
        return step.said().keySet().stream().filter(key -> key.startsWith(VISIT))
                .collect(Collectors.toMap(key -> key.substring(VISIT.length()), key -> day(step, key)));
    }

    private AgreementRequest changed(AgreementRequest request) {
        AgreementRequest now = request;
        for (AgreementEvent event : events()) {
            now = changed(now, event);
        }
        return now;
    }

    private static AgreementRequest changed(AgreementRequest request, AgreementEvent event) {
        return switch (event) {
        case Changed change -> request.changing(change.site(), new AgreementRequest.Change(change.from(),
                named(change.added(), ADD), named(change.removed(), REMOVE), Map.of(), Place.NOWHERE));
        case SiteIn coming -> request.adding(coming.site(), coming.from(), named(coming.machines(), ADD));
        case SiteOut going -> request.removing(going.site(), going.from().minusDays(1));
        case Ordered order -> request.ordering(new StandingOrders.From(order.from(), order.number()));
        default -> request;
        };
    }

    private static List<Visit.Named> named(List<String> machines, String key) {
        return machines.stream().map(id -> new Visit.Named(id, new Place("", 0, key))).toList();
    }

    private static Map<String, Back> givenBack(LifeStep step, CurrencyUnit currency) {
        Map<String, List<GivenBack>> less = parts(step, LESS, currency);
        Map<String, List<GivenBack>> credited = parts(step, BACK, currency);
        return Stream.concat(less.keySet().stream(), credited.keySet().stream()).distinct()
                .collect(Collectors.toMap(site -> site, site -> new Back(less.getOrDefault(site, List.of()),
                        credited.getOrDefault(site, List.of()))));
    }

    private static Map<String, List<GivenBack>> parts(LifeStep step, String kind, CurrencyUnit currency) {
        Map<String, List<GivenBack>> all = new HashMap<>();
        step.said().keySet().stream().filter(key -> key.startsWith(kind)).sorted().forEach(key -> {
            int end = key.lastIndexOf(' ');
            all.computeIfAbsent(key.substring(end + 1), site -> new ArrayList<>())
                    .add(DamagedRow.made(kind, () -> new GivenBack(Integer.parseInt(key.substring(kind.length(), end)),
                            Amounts.of(new BigDecimal(step.said().get(key)), currency))));
        });
        return all;
    }

    private static void say(Map<String, String> said, String kind, String site, List<GivenBack> parts) {
        parts.forEach(part -> said.put(kind + part.payment() + " " + site, Amounts.plain(part.amount())));
    }

    private static AgreementEvent event(LifeStep step) {
        return switch (DamagedRow.made("event", () -> Event.valueOf(step.event()))) {
        case NOTICE -> new Notice(step.dated(), day(step, LAST_DAY), constant(step, BY, NoticeBy.class),
                constant(step, WAY, NoticeWay.class), step.text(WHO), step.text(WORDS));
        case REFUSAL -> new Refusal(step.dated(), constant(step, WAY, NoticeWay.class), step.text(WHO),
                step.text(WORDS));
        case TOLD -> new Told(new SentNotice(step.dated(), constant(step, WAY, NoticeRule.Delivery.class),
                step.text(PAPER), step.text(TRACKING), Optional.empty(), step.text(WHO)));
        case ARRIVED -> new Arrived(step.dated());
        case CAME_BACK -> new CameBack(step.dated(), step.text(TRACKING).orElse(""));
        case RENEWED -> new Renewal(step.dated(), step.text(NEXT).orElse(""), step.text(WHO));
        case BEGUN -> new Begun(step.dated(), step.text(BEFORE).orElse(""));
        case CHANGED -> new Changed(step.dated(), day(step, FROM), step.site().orElse(""), ids(step, ADD),
                ids(step, REMOVE), step.text(WHO), step.text(WORDS));
        case SITE_IN -> new SiteIn(step.dated(), day(step, FROM), step.site().orElse(""), ids(step, ADD),
                step.text(WHO), step.text(WORDS));
        case SITE_OUT -> new SiteOut(step.dated(), day(step, FROM), step.site().orElse(""), step.text(WHO),
                step.text(WORDS));
        case ORDERED -> new Ordered(step.dated(), day(step, FROM), step.text(ORDER), step.text(WHO));
        case TRANSFERRED -> new Transfer(step.dated(), day(step, FROM), step.text(NEXT).orElse(""), step.text(WHO),
                step.text(WORDS));
        case TAKEN_OVER -> new TakenOver(step.dated(), step.text(BEFORE).orElse(""));
        };
    }

    private static LocalDate day(LifeStep step, String key) {
        return DamagedRow.made(key, () -> LocalDate.parse(step.text(key).orElse("")));
    }

    private static List<String> ids(LifeStep step, String key) {
        return step.text(key).map(ids -> List.of(ids.split(" "))).orElse(List.of());
    }

    private static <E extends Enum<E>> E constant(LifeStep step, String key, Class<E> type) {
        return DamagedRow.made(key, () -> Enum.valueOf(type, step.text(key).orElse("")));
    }

    /**
     * That somebody ends it, as the step after the last.
     *
     * @param site at which it is, the first of several
     * @param ended what goes back
     */
    public LifeStep next(Notice notice, String site, Ended ended) {
        Map<String, String> said = new HashMap<>(Map.of(LAST_DAY, notice.lastDay().toString(), BY, notice.by().name(),
                WAY, notice.way().name()));
        say(said, ended);
        return next(Event.NOTICE, notice, site, said, notice.who(), notice.words());
    }

    /**
     * That a new owner takes over the rest, as the step after the last.
     *
     * @param site at which it is, the first of several
     * @param ended what goes back to the former owner, and which visits go over to the new one
     * @param former owner, by id, with whom the step is forgotten too
     */
    public LifeStep next(Transfer transfer, String site, Ended ended, String former) {
        Map<String, String> said = new HashMap<>(Map.of(FROM, transfer.from().toString(), NEXT, transfer.next(),
                LifeStep.CUSTOMER, former));
        say(said, ended);
        say(said, ended.goingOver());
        return next(Event.TRANSFERRED, transfer, site, said, transfer.who(), transfer.words());
    }

    /**
     * That it goes on as another one, as the step after the last.
     *
     * @param visits the first days on which a visit may be one of that, by the id of the site
     */
    public LifeStep next(Renewal renewal, String site, Map<String, LocalDate> visits) {
        Map<String, String> said = new HashMap<>(Map.of(NEXT, renewal.next()));
        say(said, visits);
        return next(Event.RENEWED, renewal, site, said, renewal.who(), Optional.empty());
    }

    /** That it is what another one went on as, as its first step, with the same days. */
    public LifeStep next(Begun begun, String site, Map<String, LocalDate> visits) {
        Map<String, String> said = new HashMap<>(Map.of(BEFORE, begun.before()));
        say(said, visits);
        return next(Event.BEGUN, begun, site, said, Optional.empty(), Optional.empty());
    }

    private static void say(Map<String, String> said, Map<String, LocalDate> visits) {
        visits.forEach((where, visit) -> said.put(VISIT + where, visit.toString()));
    }

    private static void say(Map<String, String> said, Ended ended) {
        ended.givenBack().forEach((where, back) -> {
            say(said, LESS, where, back.less());
            say(said, BACK, where, back.credited());
        });
    }

    /** That anything else happens, as the step after the last. */
    public LifeStep next(AgreementEvent event, String site) {
        return switch (event) {
        case Notice notice -> next(notice, site, new Ended(notice.lastDay(), Map.of()));
        case Refusal refusal -> next(Event.REFUSAL, refusal, site, Map.of(WAY, refusal.way().name()), refusal.who(),
                refusal.words());
        case Told(SentNotice sent) -> next(Event.TOLD, event, site, said(sent), sent.by(), Optional.empty());
        case Arrived arrived -> next(Event.ARRIVED, event, site, Map.of(), Optional.empty(), Optional.empty());
        case CameBack back -> next(Event.CAME_BACK, event, site, Map.of(TRACKING, back.tracking()), Optional.empty(),
                Optional.empty());
        case Renewal renewal -> next(renewal, site, Map.of());
        case Begun begun -> next(begun, site, Map.of());
        case Changed changed ->
            next(Event.CHANGED, event, changed.site(),
                    said(changed.from(), Map.of(ADD, changed.added(), REMOVE, changed.removed())), changed.who(),
                    changed.words());
        case SiteIn coming -> next(Event.SITE_IN, event, coming.site(),
                said(coming.from(), Map.of(ADD, coming.machines())), coming.who(), coming.words());
        case SiteOut going -> next(Event.SITE_OUT, event, going.site(), said(going.from(), Map.of()), going.who(),
                going.words());
        case Transfer transfer -> next(Event.TRANSFERRED, transfer, site,
                Map.of(FROM, transfer.from().toString(), NEXT, transfer.next()), transfer.who(), transfer.words());
        case TakenOver taken ->
            next(Event.TAKEN_OVER, event, site, Map.of(BEFORE, taken.before()), Optional.empty(), Optional.empty());
        case Ordered ordered -> next(Event.ORDERED, event, site, said(ordered), ordered.who(), Optional.empty());
        };
    }

    private static Map<String, String> said(Ordered ordered) {
        Map<String, String> said = new HashMap<>(Map.of(FROM, ordered.from().toString()));
        ordered.number().ifPresent(number -> said.put(ORDER, number));
        return said;
    }

    private static Map<String, String> said(LocalDate from, Map<String, List<String>> machines) {
        Map<String, String> said = new HashMap<>(Map.of(FROM, from.toString()));
        machines.forEach((key, ids) -> {
            if (!ids.isEmpty()) {
                said.put(key, String.join(" ", ids));
            }
        });
        return said;
    }

    private static Map<String, String> said(SentNotice sent) {
        Map<String, String> said = new HashMap<>(Map.of(WAY, sent.way().name()));
        sent.paper().ifPresent(paper -> said.put(PAPER, paper));
        sent.tracking().ifPresent(number -> said.put(TRACKING, number));
        return said;
    }

    private LifeStep next(Event what, AgreementEvent event, String site, Map<String, String> said,
            Optional<String> who, Optional<String> words) {
        Map<String, String> personal = new HashMap<>();
        who.ifPresent(name -> personal.put(WHO, name));
        words.ifPresent(text -> personal.put(WORDS, text));
        return new LifeStep(KIND, number, steps.size() + 1, what.name(), event.day(), Optional.of(site), said,
                personal);
    }
}
