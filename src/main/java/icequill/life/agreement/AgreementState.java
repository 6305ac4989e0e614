package icequill.life.agreement;

import icequill.agreement.SentNotice;
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
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Where an agreement stands that was accepted. */
public sealed interface AgreementState {

    /**
     * Nothing ends it but its term.
     *
     * @param notices that it will go on, in the order in which they were sent
     */
    record InForce(List<SentNotice> notices) implements AgreementState {
        public InForce {
            notices = List.copyOf(notices);
        }
    }

    /** It runs to the end of its term and goes on as another agreement. */
    record Renewed(List<SentNotice> notices, Renewal renewal) implements AgreementState {
        public Renewed {
            notices = List.copyOf(notices);
        }
    }

    /** One that nothing happened to yet. */
    static AgreementState begun() {
        return new InForce(List.of());
    }

    /** Somebody gave notice; it runs to the day that this names. */
    record Noticed(Notice notice) implements AgreementState {}

    /** It runs to the end of its term and does not go on. */
    record Refused(Refusal refusal) implements AgreementState {}

    /** A new owner took over the rest of its term. */
    record Transferred(Transfer transfer) implements AgreementState {}

    /** Where it stands on a day. */
    default AgreementStage on(LocalDate day, AgreementTerms terms) {
        if (day.isBefore(terms.start())) {
            return AgreementStage.TO_COME;
        }
        boolean isOver = lastDay(terms).filter(day::isAfter).isPresent();
        return switch (this) {
        case InForce running -> isOver ? AgreementStage.ENDED_BY_TERM : AgreementStage.IN_FORCE;
        case Renewed renewed -> isOver ? AgreementStage.RENEWED : AgreementStage.IN_FORCE;
        case Noticed noticed -> isOver ? AgreementStage.ENDED_BY_NOTICE : AgreementStage.NOTICE_GIVEN;
        case Refused refused -> isOver ? AgreementStage.ENDED_BY_REFUSAL : AgreementStage.NOTICE_GIVEN;
        case Transferred transferred -> isOver ? AgreementStage.ENDED_BY_TRANSFER : AgreementStage.IN_FORCE;
        };
    }

    /** Its last day as far as that is known; empty where it goes on by the month. */
    default Optional<LocalDate> lastDay(AgreementTerms terms) {
        return switch (this) {
        case InForce running -> terms.termEnd();
        case Renewed renewed -> terms.termEnd();
        case Noticed(Notice notice) -> Optional.of(notice.lastDay());
        case Refused refused -> Optional.of(terms.renewal().term().lastDay());
        case Transferred(Transfer transfer) -> Optional.of(transfer.from().minusDays(1));
        };
    }

    /** Where it stands after something happened, or why that cannot be. */
    static Validated<AgreementState> step(AgreementState state, AgreementEvent event, AgreementTerms terms) {
        return told(state, event).then(after -> {
            Problems problems = new Problems();
            new StepChecks(terms, problems).of(event);
            return problems.or(() -> after);
        });
    }

    /** Where it stands after something that the book knows happened: its terms may have been mended since. */
    static Validated<AgreementState> told(AgreementState state, AgreementEvent event) {
        return event instanceof Ordered ? Validated.valid(state) : next(state, event);
    }

    private static Validated<AgreementState> next(AgreementState state, AgreementEvent event) {
        return switch (state) {
        case InForce(List<SentNotice> notices) -> inForce(notices, event);
        case Renewed(List<SentNotice> notices, Renewal renewal) -> event instanceof Notice notice
                ? Validated.valid(new Noticed(notice))
                : refused("it goes on as " + renewal.next() + " already");
        case Noticed(Notice before) ->
            refused("notice was given on " + before.day() + " already: the agreement ends on "
                    + before.lastDay());
        case Refused refused -> refused(refused, event);
        case Transferred(Transfer before) ->
            refused("it went over to " + before.next() + " on " + before.from() + " already");
        };
    }

    private static Validated<AgreementState> inForce(List<SentNotice> notices, AgreementEvent event) {
        return switch (event) {
        case Notice notice -> Validated.valid(new Noticed(notice));
        case Refusal refusal -> Validated.valid(new Refused(refusal));
        case Told(SentNotice sent) -> Validated.valid(new InForce(Stream.concat(notices.stream(), Stream.of(sent))
                .toList()));
        case Arrived(LocalDate day) -> arrived(notices, day);
        case CameBack back -> cameBack(notices, back);
        case Renewal renewal -> Validated.valid(new Renewed(notices, renewal));
        case Begun begun -> Validated.valid(new InForce(notices));
        case Transfer transfer -> Validated.valid(new Transferred(transfer));
        case TakenOver taken -> Validated.valid(new InForce(notices));
        case Changed changed -> Validated.valid(new InForce(notices));
        case SiteIn coming -> Validated.valid(new InForce(notices));
        case SiteOut going -> Validated.valid(new InForce(notices));
        case Ordered ordered -> Validated.valid(new InForce(notices));
        };
    }

    private static Validated<AgreementState> refused(Refused state, AgreementEvent event) {
        return switch (event) {
        case Notice notice -> Validated.valid(new Noticed(notice));
        case Changed changed -> Validated.valid(state);
        case SiteIn coming -> Validated.valid(state);
        case SiteOut going -> Validated.valid(state);
        default -> refused("that it goes on was refused on " + state.refusal().day() + " already");
        };
    }

    private static Validated<AgreementState> arrived(List<SentNotice> notices, LocalDate day) {
        if (notices.isEmpty() || notices.getLast().received().isPresent()) {
            return refused(notices.isEmpty()
                    ? "no notice of its renewal was sent yet"
                    : "that the last notice arrived is known already");
        }
        SentNotice last = notices.getLast();
        if (day.isBefore(last.sent())) {
            return Validated.invalid(new Problem(Code.WRONG_ORDER, at("day"),
                    "it arrived on " + day + ", but was sent on " + last.sent(), "that day or a later one"));
        }
        return Validated.valid(new InForce(Stream.concat(notices.subList(0, notices.size() - 1).stream(),
                Stream.of(last.arrived(day))).toList()));
    }

    /** The last that went out by it. */
    private static Validated<AgreementState> cameBack(List<SentNotice> notices, CameBack back) {
        return IntStream.iterate(notices.size() - 1, at -> at >= 0, at -> at - 1)
                .filter(at -> notices.get(at).tracking().filter(back.tracking()::equals).isPresent()).boxed()
                .findFirst().map(at -> {
                    List<SentNotice> after = new ArrayList<>(notices);
                    after.set(at, notices.get(at).cameBack(back.day()));
                    return Validated.<AgreementState>valid(new InForce(after));
                }).orElseGet(() -> refused("no notice of its renewal went out by " + back.tracking()));
    }

    private static Validated<AgreementState> refused(String message) {
        return Validated.invalid(new Problem(Code.NOT_ALLOWED, Place.NOWHERE, message, ""));
    }

    private static Place at(String field) {
        return new Place("", 0, field);
    }
}
