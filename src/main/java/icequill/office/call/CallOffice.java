package icequill.office.call;

import icequill.answer.call.AtHandSheet;
import icequill.answer.call.CallSheet;
import icequill.answer.call.TakenCallSheet;
import icequill.files.form.CallSteps;
import icequill.life.call.CallEvent;
import icequill.party.Language;
import icequill.party.Machine;
import icequill.party.Shop;
import icequill.party.Site;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.shop.BookedCall;
import icequill.shop.BookedCalls;
import icequill.shop.ShopBook;
import icequill.shop.life.FreeId;
import icequill.visits.PromisedResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** The office that takes calls, and looks after them until they are closed. */
public final class CallOffice {

    private static final String AT = "at";
    private static final String PROMISED = "promised";
    private static final String MACHINE = "machine";

    private final ShopBook book;
    private final Optional<Language> language;

    private CallOffice(ShopBook book, Optional<Language> language) {
        this.book = book;
        this.language = language;
    }

    /**
     * The office of a shop's folder.
     *
     * @param language of the reader; empty for the shop's
     */
    public static CallOffice of(Path folder, Clock clock, Optional<Language> language) {
        return of(ShopBook.of(folder, clock), language);
    }

    /** The same of a shop that is open already. */
    public static CallOffice of(ShopBook book, Optional<Language> language) {
        return new CallOffice(book, language);
    }

    /** What is at hand of a site, while somebody of it is on the telephone. */
    public Validated<AtHandSheet> atHand(String site) {
        return CallDesk.of(book, language).then(desk -> desk.atHand(site, language));
    }

    /**
     * Takes a call, of now unless another moment is told, with the response that agreements in force promise unless another is.
     *
     * @param site by id
     * @param told texts by the keys of a call; a limit is a number
     */
    public Validated<TakenCallSheet> take(String site, Map<String, String> told) {
        return CallDesk.of(book, language).then(desk -> desk.site(site).then(where -> desk.atHand(site, language)
                .then(hand -> take(desk, where, told).map(taken -> new TakenCallSheet(taken, hand)))));
    }

    private Validated<CallSheet> take(CallDesk desk, Site site, Map<String, String> told) {
        Map<String, String> all = new LinkedHashMap<>(told);
        all.putIfAbsent(AT, CallSteps.moment(desk.now()));
        Shop shop = desk.folder().shop().orElseThrow();
        Problems problems = new Problems();
        problems.addAll(machine(site, told));
        Optional<CallEvent> read = problems.take(taken(shop, "new", site.id(), all));
        read.filter(event -> event instanceof CallEvent.Taken taken
                && taken.call().asked().at().isAfter(desk.now())).ifPresent(later -> problems.add(Code.WRONG_ORDER,
                        field(AT), "the call at " + all.get(AT) + " is still to come", "a time up to now"));
        read.ifPresent(event -> promise(desk, site, event).ifPresent(promise -> {
            all.putIfAbsent(PROMISED, CallSteps.moment(promise.by()));
            all.put("agreement", promise.agreement());
        }));
        return problems.or(() -> all).then(whole -> book.write(open -> {
            BookedCalls calls = new BookedCalls(shop, open);
            LocalDate day = read.map(CallOffice::day).orElse(desk.now().toLocalDate());
            String id = FreeId.like(FreeId.of(site.id(), day), calls::has);
            return taken(shop, id, site.id(), whole).then(event -> calls.add(open, id, site.id(), event, day))
                    .map(call -> new CallTelling(desk.folder(), open, desk.sentences(), desk.now()).sheet(call));
        }));
    }

    private static LocalDate day(CallEvent taken) {
        return ((CallEvent.Taken) taken).call().asked().at().toLocalDate();
    }

    private static Validated<CallEvent> taken(Shop shop, String id, String site, Map<String, String> told) {
        return new CallSteps(shop).event(id, site, CallSteps.Kind.TAKEN, told);
    }

    /** Nothing where another moment was promised on the telephone. */
    private static Optional<PromisedResponse> promise(CallDesk desk, Site site, CallEvent event) {
        return event instanceof CallEvent.Taken taken && taken.call().asked().promised().isEmpty()
                ? CallDesk.soonest(desk.agreements(site, taken.call().asked().at(), taken.call().machine(),
                        new Problems()))
                : Optional.empty();
    }

    private static List<Problem> machine(Site site, Map<String, String> told) {
        return Optional.ofNullable(told.get(MACHINE)).filter(id -> site.machine(id).isEmpty())
                .map(id -> Problem.unknownName(field(MACHINE), MACHINE, id,
                        site.machines().stream().map(Machine::id).toList()))
                .stream().toList();
    }

    /** Plans who goes there and when, or plans it anew. */
    public Validated<CallSheet> plan(String call, Map<String, String> told, Optional<Integer> seen) {
        return step(call, CallSteps.Kind.PLANNED, told, seen);
    }

    /** Records who allows more than the limit, from today on unless another day is told. */
    public Validated<CallSheet> approve(String call, Map<String, String> told, Optional<Integer> seen) {
        return CallDesk.of(book, language).then(desk -> {
            Map<String, String> all = new LinkedHashMap<>(told);
            all.putIfAbsent("on", desk.now().toLocalDate().toString());
            return all.containsKey("limit")
                    ? step(call, CallSteps.Kind.APPROVED, all, seen)
                    : Validated.invalid(new Problem(Code.MISSING, field("limit"), "the new limit is missing", ""));
        });
    }

    /**
     * Corrects what one says.
     *
     * @param told texts by the keys of a call, for all that is changed; no letters take something away
     */
    public Validated<CallSheet> change(String call, Map<String, String> told, Optional<Integer> seen) {
        return CallDesk.of(book, language).then(desk -> book.read(open -> new BookedCalls(
                desk.folder().shop().orElseThrow(), open).find(call)).then(known -> desk.site(known.site())
                        .then(site -> corrected(site, known, told)).then(whole -> step(call, CallSteps.Kind.CORRECTED,
                                whole, Optional.of(seen.orElse(known.steps().size()))))));
    }

    private static Validated<Map<String, String>> corrected(Site site, BookedCall known, Map<String, String> told) {
        Map<String, String> before = CallSteps.told(new CallEvent.Taken(known.state().known().call()));
        Map<String, String> all = new LinkedHashMap<>(before);
        all.putAll(told);
        all.values().removeIf(String::isBlank);
        Problems problems = new Problems();
        Map.of("by", "it is not said who calls", "symptom", "it is not said what is wrong").forEach((key, missing) -> {
            if (!all.containsKey(key)) {
                problems.add(Code.MISSING, field(key), missing, "");
            }
        });
        if (!Objects.equals(before.get(MACHINE), all.get(MACHINE))) {
            problems.addAll(machine(site, all));
        }
        if (all.equals(before)) {
            problems.add(Code.MISSING, Place.NOWHERE, "nothing is changed", "something that the call says otherwise");
        }
        return problems.or(() -> all);
    }

    /** Closes one that somebody went to. */
    public Validated<CallSheet> close(String call, Optional<Integer> seen) {
        return step(call, CallSteps.Kind.CLOSED, Map.of(), seen);
    }

    /** Withdraws one that nobody goes to. */
    public Validated<CallSheet> withdraw(String call, Map<String, String> told, Optional<Integer> seen) {
        return step(call, CallSteps.Kind.WITHDRAWN, told, seen);
    }

    /** @param seen how many steps there were when somebody looked; empty where that does not matter */
    private Validated<CallSheet> step(String call, CallSteps.Kind kind, Map<String, String> told,
            Optional<Integer> seen) {
        return CallDesk.of(book, language).then(desk -> book.write(open -> {
            Shop shop = desk.folder().shop().orElseThrow();
            BookedCalls calls = new BookedCalls(shop, open);
            return calls.find(call).then(known -> unchanged(known, seen))
                    .then(known -> new CallSteps(shop).event(call, known.site(), kind, told)
                            .then(event -> calls.add(open, call, known.site(), event, desk.now().toLocalDate())))
                    .map(next -> new CallTelling(desk.folder(), open, desk.sentences(), desk.now()).sheet(next));
        }));
    }

    private static Validated<BookedCall> unchanged(BookedCall call, Optional<Integer> seen) {
        return seen.filter(steps -> steps != call.steps().size()).isPresent()
                ? Validated.invalid(new Problem(Code.CHANGED_MEANWHILE, Place.NOWHERE,
                        "call \"" + call.id() + "\" was changed by somebody else since this page was shown",
                        "look at it anew"))
                : Validated.valid(call);
    }

    /** One call. */
    public Validated<CallSheet> show(String call) {
        return CallDesk.of(book, language)
                .then(desk -> book.read(open -> new BookedCalls(desk.folder().shop().orElseThrow(), open).find(call)
                        .map(found -> new CallTelling(desk.folder(), open, desk.sentences(), desk.now())
                                .sheet(found))));
    }

    private static Place field(String name) {
        return new Place("", 0, name);
    }
}
