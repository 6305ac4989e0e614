package icequill.render.page;

import icequill.problem.Check;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** All that the template of a page reads: the names of several records, side by side. */
public record Page(List<Texts> parts) implements Texts {

    /** @throws IllegalArgumentException when two parts have a name in common */
    public Page {
        parts = List.copyOf(parts);
        Set<String> names = new HashSet<>();
        parts.forEach(part -> Components.of(part.getClass()).keySet()
                .forEach(name -> Check.that(names.add(name), "two parts of a page have the name " + name)));
    }

    public static Page of(Texts... parts) {
        return new Page(List.of(parts));
    }

    public Page with(Texts part) {
        return new Page(Stream.concat(parts.stream(), Stream.of(part)).toList());
    }
}
