package icequill.office.register;

import icequill.files.answer.AnswerMapper;
import icequill.files.yaml.Tree;
import icequill.files.yaml.TreeJson;
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

    /**
     * What is typed, and where.
     *
     * @param id by chance, 20 to 50 letters, digits and hyphens
     * @param subject what it changes, by id; no letters for something new
     */
    public record Begun(String id, String form, String site, String subject) {}

    /**
     * Keeps what stands in the fields of a form, in place of what it was before; of a form that was sent meanwhile nothing.
     *
     * @param key of the form
     */
    public Validated<Begun> keep(Begun begun, String key, Map<String, List<String>> fields) {
        if (!ID.matcher(begun.id()).matches()) {
            return Validated.invalid(new Problem(Code.NOT_ALLOWED, Place.NOWHERE,
                    "no draft is called \"" + begun.id() + "\"", "the page opened anew"));
        }
        return book.write(open -> open.entries().site(begun.site()).map(site -> {
            if (open.sentForms().answer(key, "").found().filter(Optional::isEmpty).isPresent()) {
                open.formDrafts().keep(begun.id(), begun.form(), begun.site(), begun.subject(),
                        AnswerMapper.text(fields));
            }
            return begun;
        }));
    }

    /** One that was begun; empty where it was sent or thrown away. */
    public Optional<KeptDraft> find(String id) {
        return book.read(open -> Validated.valid(open.entries().draft(id).map(DraftOffice::kept))).found()
                .flatMap(found -> found);
    }

    /** All that was begun of a form, the last kept first. */
    public List<KeptDraft> all(String form) {
        return book.read(open -> Validated.valid(open.entries().drafts(form).stream().map(DraftOffice::kept).toList()))
                .found().orElse(List.of());
    }

    /** Throws one away, or lets it go since it was sent. */
    public Validated<String> discard(String id) {
        return book.write(open -> {
            open.formDrafts().discard(id);
            return Validated.valid(id);
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
