package icequill.web.page;

import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.shop.ShopBook;
import icequill.web.door.FormKey;
import icequill.web.door.Session;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a browser asks for.
 *
 * @param path of the address, without what follows a question mark
 * @param parts of the path, by name
 * @param fields of the form or behind the question mark, by name; what is blank is left out, and spaces at the ends are
 * @param uploads in the order of the form
 */
public record Asked(ShopBook book, Session session, Reader reader, String path, Map<String, String> parts,
        Map<String, List<String>> fields, List<Upload> uploads) {

    public Asked {
        uploads = List.copyOf(uploads);
        parts = Map.copyOf(parts);
        fields = Map.copyOf(fields);
    }

    /** A part of the path that its route has. */
    public String part(String name) {
        return parts.getOrDefault(name, "");
    }

    public Optional<String> text(String name) {
        return texts(name).stream().findFirst();
    }

    /** The month that somebody typed, as 2026-05 where it can be read. */
    public Optional<String> month() {
        return text("month").map(typed -> TypedMonth.text(typed.strip(), reader.today()));
    }

    /** The day that somebody typed; empty where he typed none, or what is none, which is added to the problems. */
    public Optional<LocalDate> day(String field, Problems problems) {
        return text(field).flatMap(typed -> problems.take(TypedDay.of(typed, reader, field)));
    }

    /** The day that somebody typed, the usual one where he typed none, or what is wrong with it. */
    public Validated<LocalDate> day(String field, LocalDate usual) {
        return text(field).map(typed -> TypedDay.of(typed, reader, field)).orElseGet(() -> Validated.valid(usual));
    }

    /** All values of a name, in the order of the form. */
    public List<String> texts(String name) {
        return fields.getOrDefault(name, List.of());
    }

    /** The key of the form that was sent, by which the book remembers what becomes of it; empty where no page of the session carried it. */
    public Optional<String> formKey() {
        return text(PageHandler.KEY).flatMap(session::sentKey).map(FormKey::word);
    }

    /** The same with other fields, as if they had been typed. */
    public Asked typing(Map<String, List<String>> others) {
        return new Asked(book, session, reader, path, parts, others, uploads);
    }

    /** The same with another hold of the book. */
    Asked with(ShopBook other) {
        return new Asked(other, session, reader, path, parts, fields, uploads);
    }
}
