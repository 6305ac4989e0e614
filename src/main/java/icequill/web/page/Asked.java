package icequill.web.page;

import icequill.shop.ShopBook;
import icequill.web.door.FormKey;
import icequill.web.door.Session;
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
