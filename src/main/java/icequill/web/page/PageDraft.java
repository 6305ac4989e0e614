package icequill.web.page;

import icequill.office.register.DraftOffice;
import icequill.office.register.KeptDraft;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.regex.Pattern;

/** The draft under which a page keeps what is typed. One thing comes of it, in however many windows it stands open. */
public final class PageDraft {

    /** The field that holds its id, on the page and in its address. */
    public static final String ID = "draft";
    /** Behind the address of what was made before. */
    private static final String AGAIN = "again";

    private final Asked asked;
    private final DraftOffice office;
    private final DraftOffice.Begun begun;

    /**
     * The draft of a page.
     *
     * @param form what is typed
     * @param site empty for one that the book does not have yet
     * @param subject what it changes, by id; no letters for something new
     */
    public PageDraft(Asked asked, String form, Optional<String> site, String subject) {
        this.asked = asked;
        this.office = new DraftOffice(asked.book());
        this.begun = new DraftOffice.Begun(asked.text(ID).orElse(""), form, site, subject);
    }

    /**
     * Does what its form asks for, unless that was done before in another window: then it gives the address of that. A draft that was
     * thrown away is a problem.
     *
     * @param doing gives the address of what was made
     */
    public Validated<String> once(Supplier<Validated<String>> doing) {
        return office.became(begun).then(before -> before.map(made -> Validated.valid(made + "?" + AGAIN + "=yes"))
                .orElseGet(() -> doing.get().then(made -> office.sent(begun, made))));
    }

    /** Whether a page shows what was made before, when somebody asked for it once more. */
    public static boolean isAgain(Asked asked) {
        return asked.text(AGAIN).isPresent();
    }

    /**
     * Keeps what is typed, and goes where it is shown.
     *
     * @param address of the page of a site
     * @param besides fields that are not kept
     * @param days the names of fields that hold days: today is another one when it is gone on with
     * @param again shows the page once more with what is wrong, to be kept as a new draft
     */
    public Answer keep(Function<Optional<String>, String> address, List<String> besides,
            Pattern days, BiFunction<Asked, List<Problem>, Answer> again) {
        Map<String, List<String>> fields = new LinkedHashMap<>(asked.fields());
        fields.keySet().removeAll(List.of(PageHandler.KEY, ID));
        fields.keySet().removeAll(besides);
        fields.replaceAll((name, values) -> days.matcher(name).matches() ? lasting(values) : values);
        Validated<DraftOffice.Begun> kept = office.keep(begun, asked.formKey().orElse(""), fields);
        boolean isEnded = kept.problems().stream().anyMatch(PageDraft::isOfDraft);
        return isEnded
                ? new Answer.Instead(again.apply(asked, kept.problems()), kept.problems())
                : Answer.of(kept, done -> new Answer.Gone(address.apply(done.site()) + "?" + ID + "=" + done.id()));
    }

    private List<String> lasting(List<String> values) {
        return values.stream()
                .map(text -> TypedDay.of(text, asked.reader(), ID).map(String::valueOf).found().orElse(text))
                .toList();
    }

    /** What is asked for, with a new draft where the problem is that its own has ended. */
    public static Asked afresh(Asked asked, List<Problem> problems) {
        if (problems.stream().noneMatch(PageDraft::isOfDraft)) {
            return asked;
        }
        Map<String, List<String>> fields = new LinkedHashMap<>(asked.fields());
        fields.put(ID, List.of(UUID.randomUUID().toString()));
        return asked.typing(fields);
    }

    private static boolean isOfDraft(Problem problem) {
        return problem.place().path().equals(ID);
    }

    /** What was typed into a page that is opened to go on with it. */
    public Optional<KeptDraft> found() {
        return asked.text(ID).flatMap(office::find).filter(draft -> draft.form().equals(begun.form())
                && draft.site().equals(begun.site()) && draft.subject().equals(begun.subject()));
    }

    /** Where what became of it is shown; empty while it can be gone on with. */
    public Optional<Answer> gone() {
        return asked.text(ID).flatMap(id -> office.became(begun).found()).flatMap(address -> address)
                .map(Answer.Gone::new);
    }

    /** Its id, or one by chance for a page that is opened anew. */
    public String id() {
        return asked.text(ID).filter(id -> asked.fields().containsKey(PageHandler.KEY) || found().isPresent())
                .orElseGet(() -> UUID.randomUUID().toString());
    }
}
