package icequill.office.register;

import icequill.files.answer.AnswerMapper;
import icequill.files.yaml.Tree;
import icequill.files.yaml.TreeJson;
import icequill.ledger.Reading;
import icequill.ledger.entries.FormDraft;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.shop.ShopBook;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** The office that keeps what somebody began to type, so that neither a closed window nor a lost machine takes it away. */
public record DraftOffice(ShopBook book) {

    private static final Pattern ID = Pattern.compile("[A-Za-z0-9_-]{20,50}");
    /** At which problems with the draft itself lie. */
    private static final Place PLACE = new Place("", 0, "draft");

    /**
     * What is typed, and where.
     *
     * @param id by chance, 20 to 50 letters, digits and hyphens
     * @param site empty for one that the book does not have yet
     * @param subject what it changes, by id; no letters for something new
     */
    public record Begun(String id, String form, Optional<String> site, String subject) {}

    /**
     * Keeps what stands in the fields of a form, in place of what it was before; of a form that was sent meanwhile nothing. One that ended
     * in another window, or whose customer was forgotten, is a problem.
     *
     * @param key of the form
     */
    public Validated<Begun> keep(Begun begun, String key, Map<String, List<String>> fields) {
        if (!ID.matcher(begun.id()).matches()) {
            return Validated.invalid(new Problem(Code.NOT_ALLOWED, Place.NOWHERE,
                    "no draft is called \"" + begun.id() + "\"", "the page opened anew"));
        }
        return book.write(open -> open.sentForms().answer(key, "").found().filter(Optional::isEmpty).isEmpty()
                ? Validated.valid(begun)
                : canBeKept(open, begun).map(can -> {
                    open.formDrafts().keep(can.id(), can.form(), can.site(), can.subject(),
                            AnswerMapper.text(fields));
                    return can;
                }));
    }

    /** With its site as it is called now. */
    private static Validated<Begun> canBeKept(Reading open, Begun begun) {
        Optional<Problem> ended = open.entries().draft(begun.id()).flatMap(DraftOffice::end);
        if (ended.isPresent()) {
            return Validated.invalid(ended.get());
        }
        return begun.site().map(id -> open.entries().siteNow(id)
                .then(site -> open.entries().customer(site.customer())
                        .then(customer -> customer.forgotten().isPresent()
                                ? Validated.<Begun>invalid(forgotten())
                                : Validated.valid(new Begun(begun.id(), begun.form(), Optional.of(site.id()),
                                        begun.subject())))))
                .orElseGet(() -> Validated.valid(begun));
    }

    private static Optional<Problem> end(FormDraft draft) {
        return draft.ended().map(how -> switch (how) {
        case SENT -> new Problem(Code.CHANGED_MEANWHILE, PLACE,
                "this draft became \"" + draft.answer().orElse("").replaceFirst(".*/", "")
                        + "\" meanwhile, in another window",
                "what is typed here kept as a new draft, or this window closed");
        case DISCARDED -> new Problem(Code.CHANGED_MEANWHILE, PLACE,
                "this draft was thrown away meanwhile, in another window",
                "what is typed here kept as a new draft, or this window closed");
        case FORGOTTEN -> forgotten();
        });
    }

    /** Nothing personal is to come back from a window that was left open. */
    private static Problem forgotten() {
        return new Problem(Code.CHANGED_MEANWHILE, Place.NOWHERE,
                "the customer was forgotten, and what is typed of him is not kept", "this window closed");
    }

    /**
     * The address of what a draft became that was sent before; empty where it may be sent, as a change may that is made once more, since it
     * goes by what it changes. One that was thrown away or forgotten is a problem.
     */
    public Validated<Optional<String>> became(Begun begun) {
        return book.read(open -> {
            Optional<String> answer = open.entries().draft(begun.id()).flatMap(FormDraft::answer);
            return answer.isPresent()
                    ? Validated.valid(answer.filter(address -> begun.subject().isEmpty()))
                    : canBeKept(open, begun).map(can -> Optional.empty());
        });
    }

    /** One that was begun; empty where it was sent or thrown away. */
    public Optional<KeptDraft> find(String id) {
        return book.read(open -> Validated.valid(open.entries().draft(id)
                .filter(draft -> draft.ended().isEmpty()).map(DraftOffice::kept))).found().flatMap(found -> found);
    }

    /** All that was begun of a form, the last kept first. */
    public List<KeptDraft> all(String form) {
        return book.read(open -> Validated.valid(open.entries().drafts(form).stream().map(DraftOffice::kept).toList()))
                .found().orElse(List.of());
    }

    /** Throws one away. */
    public Validated<String> discard(String id) {
        return book.write(open -> {
            open.formDrafts().discard(id);
            return Validated.valid(id);
        });
    }

    /**
     * Lets one go since it was sent, and remembers what it became.
     *
     * @param address of that
     */
    public Validated<String> sent(Begun begun, String address) {
        return book.write(open -> {
            if (ID.matcher(begun.id()).matches()) {
                open.formDrafts().sent(begun.id(), begun.form(), address);
            }
            return Validated.valid(address);
        });
    }

    private static KeptDraft kept(FormDraft draft) {
        Map<String, List<String>> fields = new LinkedHashMap<>();
        TreeJson.branch(draft.content(), "draft " + draft.id()).entries().forEach((name, values) -> fields.put(name,
                values.texts().map(Tree.Leaf::text).toList()));
        return new KeptDraft(draft.id(), draft.form(), draft.site(), draft.subject(), draft.beganAt(),
                draft.keptAt(), fields);
    }
}
