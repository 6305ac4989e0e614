package icequill.shop.life;

import icequill.explain.ConstantKey;
import icequill.ledger.Reading;
import icequill.ledger.entries.LifeStep;
import icequill.ledger.store.DamagedRow;
import icequill.life.mail.MailCopy;
import icequill.life.mail.MailEvent;
import icequill.life.mail.MailLetter;
import icequill.life.mail.MailMatter;
import icequill.life.mail.MailMatter.Loose;
import icequill.life.mail.MailMatter.Numbered;
import icequill.life.mail.MailState;
import icequill.life.mail.MailTells;
import icequill.party.Contact;
import icequill.party.Language;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * A mail of the book.
 *
 * @param id the paper's, and a number
 * @param customer by id
 * @param messageId the same however often it is sent
 * @param reports by which it is known to have come back, as hashes of their files
 * @param copy what it said when it was last sent or laid down; empty before, and where the customer was forgotten since
 */
public record MailLife(String id, MailMatter matter, String customer, Optional<String> site, String messageId,
        MailState state, Set<String> reports, Optional<MailCopy> copy, List<Noted> history) {

    private static final String KIND = "MAIL";
    private static final String OF_PAPER = ".m";
    private static final String AT = "at";
    private static final String WHY = "why";
    private static final String REPORT = "report";
    private static final String NUMBER = "number";
    private static final String MESSAGE = "messageId";
    private static final String OCCASION = "occasion";
    private static final String PURPOSE = "purpose";
    private static final String LANGUAGE = "language";
    private static final String HASH = "hash";
    private static final String TITLE = "title";
    private static final String FACTS = "facts";
    private static final String SENTENCES = "sentences";
    private static final String PRINTED = "printed";
    private static final String AGREEMENT = "agreement";
    private static final String VISIT = "visit";
    private static final String BEGINS = "begins";
    private static final String ENDS = "ends";
    private static final String TO = "to";
    private static final String SUBJECT = "subject";
    private static final String TEXT = "text";
    private static final String FILES = "files";
    private static final Set<String> OVER = Set.of(Event.SENT.name(), Event.WENT_OUT.name(), Event.WITHDRAWN.name());

    private static final Set<String> WENT = Set.of(ConstantKey.of(Event.SENT), ConstantKey.of(Event.WENT_OUT));

    public MailLife {
        reports = Set.copyOf(reports);
        history = List.copyOf(history);
    }

    private enum Event {
        WRITTEN, TRIED, DRAFTED, SENT, PUT_OFF, REFUSED, LOST, RETURNED, WENT_OUT, DID_NOT_GO_OUT, RETRIED, WITHDRAWN
    }

    /** Something that happened to it, by its name, with what a server or a person said. */
    public record Noted(String event, Instant at, String why) {}

    /** The mail of an id, or that there is none. */
    public static Validated<MailLife> of(Reading open, String id) {
        List<LifeStep> steps = open.entries().steps(KIND, id);
        return steps.isEmpty()
                ? Validated.invalid(new Problem(Code.UNKNOWN_NAME, Place.NOWHERE, "there is no mail \"" + id + "\"",
                        "a mail of the list"))
                : Validated.valid(of(steps));
    }

    /** All mails about a paper, in their order. */
    public static List<MailLife> about(Reading open, String number) {
        List<MailLife> mails = new ArrayList<>();
        List<LifeStep> steps = open.entries().steps(KIND, id(number, 1));
        while (!steps.isEmpty()) {
            mails.add(of(steps));
            steps = open.entries().steps(KIND, id(number, mails.size() + 1));
        }
        return mails;
    }

    /**
     * Mails of the book by id.
     *
     * @param isAll those too that went out or were withdrawn
     */
    public static List<MailLife> all(Reading open, boolean isAll) {
        return (isAll ? open.entries().steps(KIND) : open.entries().unfinished(KIND, OVER)).stream()
                .collect(Collectors.groupingBy(LifeStep::id, TreeMap::new, Collectors.toList())).values().stream()
                .map(MailLife::of).toList();
    }

    /**
     * The id of the next mail about a paper.
     *
     * @param before the mails about it
     */
    public static String idAfter(String number, List<MailLife> before) {
        return id(number, before.size() + 1);
    }

    private static String id(String number, int count) {
        return number + OF_PAPER + count;
    }

    /** That a mail is written, which is its first step. */
    public static LifeStep written(String id, MailMatter matter, String customer, Optional<String> site,
            String messageId, Instant now, LocalDate day) {
        Map<String, String> said = new HashMap<>(Map.of(AT, now.toString(), LifeStep.CUSTOMER, customer, MESSAGE,
                messageId, NUMBER, matter.name()));
        said.putAll(switch (matter) {
        case Numbered numbered -> Map.of(OCCASION, numbered.occasion().name());
        case Loose loose -> said(loose);
        });
        return new LifeStep(KIND, id, 1, Event.WRITTEN.name(), day, site, said,
                matter instanceof Loose loose ? loose.letter().map(MailLife::kept).orElse(Map.of()) : Map.of());
    }

    private static Map<String, String> said(Loose loose) {
        Map<String, String> said = new HashMap<>(Map.of(PURPOSE, loose.purpose().name(), LANGUAGE,
                loose.language().tag(), HASH, loose.hash()));
        loose.tells().ifPresent(told -> said.putAll(switch (told) {
        case MailTells.OfRenewal(String agreement) -> Map.of(AGREEMENT, agreement);
        case MailTells.OfVisit(String visit, LocalDateTime begins, LocalDateTime ends) ->
            Map.of(VISIT, visit, BEGINS, begins.toString(), ENDS, ends.toString());
        }));
        return said;
    }

    private static Optional<MailTells> tells(LifeStep step) {
        return step.text(AGREEMENT).<MailTells>map(MailTells.OfRenewal::new)
                .or(() -> step.text(VISIT).map(visit -> new MailTells.OfVisit(visit, moment(step, BEGINS),
                        moment(step, ENDS))));
    }

    private static LocalDateTime moment(LifeStep step, String key) {
        return DamagedRow.made(key, () -> LocalDateTime.parse(step.text(key).orElseThrow()));
    }

    private static Map<String, String> kept(MailLetter letter) {
        Map<String, String> kept = new HashMap<>(Map.of(TITLE, letter.title(), FACTS,
                String.join("\n", letter.facts()), SENTENCES, String.join("\n", letter.sentences())));
        letter.printed().ifPresent(address -> kept.put(PRINTED, address));
        return kept;
    }

    /** When it went out last, as far as that is known. */
    public Optional<Instant> wentOut() {
        return history.reversed().stream().filter(step -> WENT.contains(step.event())).map(Noted::at).findFirst();
    }

    /** What happens, as the step after the last. */
    public LifeStep next(MailEvent event, LocalDate day) {
        return switch (event) {
        case MailEvent.Attempt tried -> step(Event.TRIED, tried.at(), "", day);
        case MailEvent.Draft draft -> step(Event.DRAFTED, draft.at(), draft.file(), day);
        case MailEvent.Acceptance taken -> step(Event.SENT, taken.at(), taken.answer(), day);
        case MailEvent.Postponement later -> step(Event.PUT_OFF, later.at(), later.why(), day);
        case MailEvent.Rejection no -> step(Event.REFUSED, no.at(), no.why(), day);
        case MailEvent.Silence lost -> step(Event.LOST, lost.at(), lost.why(), day);
        case MailEvent.Bounce back -> returned(back, day);
        case MailEvent.Finding found ->
            step(found.wentOut() ? Event.WENT_OUT : Event.DID_NOT_GO_OUT, found.at(), "", day);
        case MailEvent.Retry again -> step(Event.RETRIED, again.at(), "", day);
        case MailEvent.Withdrawal gone -> step(Event.WITHDRAWN, gone.at(), gone.reason(), day);
        };
    }

    private LifeStep returned(MailEvent.Bounce back, LocalDate day) {
        LifeStep step = step(Event.RETURNED, back.at(), back.why(), day);
        Map<String, String> said = new HashMap<>(step.said());
        back.report().ifPresent(hash -> said.put(REPORT, hash));
        return new LifeStep(step.kind(), step.id(), step.position(), step.event(), step.dated(), step.site(), said,
                step.personal());
    }

    /** The same, with what the mail says. */
    public LifeStep next(MailEvent event, LocalDate day, MailCopy copy) {
        LifeStep step = next(event, day);
        Map<String, String> personal = new HashMap<>(step.personal());
        personal.putAll(Map.of(TO, String.join("\n", copy.to()), SUBJECT, copy.subject(), TEXT, copy.text(), FILES,
                String.join("\n", copy.files())));
        return new LifeStep(step.kind(), step.id(), step.position(), step.event(), step.dated(), step.site(),
                step.said(), personal);
    }

    /** What servers and people say may name a person. */
    private LifeStep step(Event what, Instant at, String why, LocalDate day) {
        return new LifeStep(KIND, id, history.size() + 1, what.name(), day, site,
                Map.of(AT, at.toString(), LifeStep.CUSTOMER, customer),
                why.isEmpty() ? Map.of() : Map.of(WHY, why));
    }

    /** One that is only proposed, by its first step. */
    public static MailLife proposed(LifeStep first) {
        return of(List.of(first));
    }

    private static MailLife of(List<LifeStep> steps) {
        LifeStep first = steps.getFirst();
        MailState state = LifeStep.led("mail", MailState.written(at(first)), steps.subList(1, steps.size()),
                (before, step) -> MailState.step(before, event(step)));
        return new MailLife(first.id(), matter(first), first.text(LifeStep.CUSTOMER).orElse(""), first.site(),
                first.text(MESSAGE).orElse(""), state,
                steps.stream().flatMap(step -> step.text(REPORT).stream()).collect(Collectors.toUnmodifiableSet()),
                steps.reversed().stream().filter(step -> step.text(TEXT).isPresent()).map(MailLife::copy).findFirst(),
                steps.stream()
                        .map(step -> new Noted(ConstantKey.of(event(first, step)), at(step), step.text(WHY).orElse("")))
                        .toList());
    }

    private static Event event(LifeStep first, LifeStep step) {
        return step.position() == first.position()
                ? Event.WRITTEN
                : DamagedRow.made("event", () -> Event.valueOf(step.event()));
    }

    private static MailMatter matter(LifeStep step) {
        String name = step.text(NUMBER).orElse("");
        return step.text(HASH).<MailMatter>map(hash -> DamagedRow.made(PURPOSE, () -> new Loose(name,
                Contact.Purpose.valueOf(step.text(PURPOSE).orElseThrow()),
                new Language(step.text(LANGUAGE).orElseThrow()), hash, tells(step),
                step.text(TITLE).map(title -> new MailLetter(title, lines(step, FACTS), lines(step, SENTENCES),
                        step.text(PRINTED))))))
                .orElseGet(() -> new Numbered(name, DamagedRow.made(OCCASION,
                        () -> MailMatter.Occasion.valueOf(step.text(OCCASION).orElseThrow()))));
    }

    private static MailCopy copy(LifeStep step) {
        return new MailCopy(lines(step, TO), step.text(SUBJECT).orElse(""), step.text(TEXT).orElse(""),
                lines(step, FILES));
    }

    private static List<String> lines(LifeStep step, String key) {
        return step.text(key).orElse("").lines().toList();
    }

    private static Instant at(LifeStep step) {
        return DamagedRow.made(AT, () -> Instant.parse(step.text(AT).orElseThrow()));
    }

    private static MailEvent event(LifeStep step) {
        Instant at = at(step);
        String why = step.text(WHY).orElse("");
        return switch (DamagedRow.made("event", () -> Event.valueOf(step.event()))) {
        case WRITTEN -> throw new DamagedRow("mail " + step.id() + " was written twice");
        case TRIED -> new MailEvent.Attempt(at);
        case DRAFTED -> new MailEvent.Draft(at, why);
        case SENT -> new MailEvent.Acceptance(at, why);
        case PUT_OFF -> new MailEvent.Postponement(at, why);
        case REFUSED -> new MailEvent.Rejection(at, why);
        case LOST -> new MailEvent.Silence(at, why);
        case RETURNED -> new MailEvent.Bounce(at, why, step.text(REPORT));
        case WENT_OUT -> new MailEvent.Finding(at, true);
        case DID_NOT_GO_OUT -> new MailEvent.Finding(at, false);
        case RETRIED -> new MailEvent.Retry(at);
        case WITHDRAWN -> new MailEvent.Withdrawal(at, why);
        };
    }
}
