package icequill.ledger.entries;

import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.time.Instant;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** What became of the forms of pages that were sent, so that none does its work twice. */
public final class SentForms {

    private final Handle handle;
    private final Instant now;

    public SentForms(Handle handle, Instant now) {
        this.handle = handle;
        this.now = now;
    }

    private record Row(String content, String answer) {}

    /**
     * The answer to a form that was sent before; empty where it was not. With another content than then it is a problem.
     *
     * @param content a hash of all that it says
     */
    public Validated<Optional<String>> answer(String key, String content) {
        Optional<Row> known = handle.createQuery("SELECT content, answer FROM sent_form WHERE form_key = :key")
                .bind("key", key).map((row, context) -> new Row(row.getString("content"), row.getString("answer")))
                .findOne();
        return known.filter(row -> !row.content().equals(content)).isPresent()
                ? Validated.invalid(new Problem(Code.ALREADY_EXISTS, Place.NOWHERE,
                        "this form was sent before, and said something else then; what it did stands",
                        "the page opened anew, to do something more"))
                : Validated.valid(known.map(Row::answer));
    }

    /** Remembers what became of a form. */
    public void remember(String key, String content, String answer) {
        handle.createUpdate("""
                INSERT INTO sent_form (form_key, content, answer, sent_at) VALUES (:key, :content, :answer, :at)""")
                .bind("key", key).bind("content", content).bind("answer", answer).bind("at", now.toString()).execute();
    }
}
