package icequill.office.register;

import icequill.explain.ConstantKey;
import icequill.party.Contact;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.shop.UnknownName;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * What is to be done to one of the contacts of a customer or a site.
 *
 * @param parts values by their keys; one of no letters is taken out
 */
public record ContactChange(Kind kind, String name, Map<String, String> parts) {

    /** What is done. */
    public enum Kind {
        ADD, CHANGE, REMOVE
    }

    private static final String NAME = "name";

    public ContactChange {
        parts = new LinkedHashMap<>(parts);
    }

    /** All contacts once it is done, as a flag has them. */
    Validated<String> over(List<Contact> before) {
        List<Map<String, String>> contacts = before.stream().map(ContactChange::texts)
                .collect(Collectors.toCollection(ArrayList::new));
        List<String> names = contacts.stream().map(contact -> contact.getOrDefault(NAME, "")).toList();
        int at = names.indexOf(name);
        if (kind == Kind.ADD ? at >= 0 : at < 0) {
            return Validated.invalid(kind == Kind.ADD
                    ? new Problem(Code.ALREADY_EXISTS, Place.NOWHERE, "there is a contact \"" + name + "\" already",
                            "another name, or: change")
                    : UnknownName.name("contact", name, names, "see: icequill contact list"));
        }
        switch (kind) {
        case ADD -> contacts.add(changed(Map.of(NAME, name)));
        case CHANGE -> contacts.set(at, changed(contacts.get(at)));
        case REMOVE -> contacts.remove(at);
        }
        List<String> parted = contacts.stream().flatMap(contact -> contact.values().stream())
                .filter(value -> value.contains(";") || value.contains("|")).toList();
        return parted.isEmpty()
                ? Validated.valid(contacts.stream().map(ContactChange::text).collect(Collectors.joining("; ")))
                : Validated.invalid(new Problem(Code.NOT_ALLOWED, Place.NOWHERE,
                        "a semicolon or a bar stands in " + String.join(", ", parted),
                        "texts without them, or a form: icequill export, then import"));
    }

    private Map<String, String> changed(Map<String, String> contact) {
        Map<String, String> changed = new LinkedHashMap<>(contact);
        parts.forEach((key, value) -> {
            if (value.isBlank()) {
                changed.remove(key);
            } else {
                changed.put(key, value);
            }
        });
        return changed;
    }

    private static Map<String, String> texts(Contact contact) {
        Map<String, String> texts = new LinkedHashMap<>(Map.of(NAME, contact.name()));
        contact.role().ifPresent(role -> texts.put("role", role));
        if (!contact.purposes().isEmpty()) {
            texts.put("for", contact.purposes().stream().sorted().map(ConstantKey::of)
                    .collect(Collectors.joining(", ")));
        }
        contact.telephone().ifPresent(number -> texts.put("telephone", number));
        contact.email().ifPresent(address -> texts.put("email", address));
        return texts;
    }

    private static String text(Map<String, String> contact) {
        return contact.entrySet().stream().map(part -> part.getKey() + ": " + part.getValue())
                .collect(Collectors.joining(" | "));
    }
}
