package icequill.files.yaml;

import icequill.money.Percent;
import icequill.party.Language;
import icequill.party.Period;
import icequill.party.Wording;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The keys and values of one place in a file. A value that is missing or of the wrong kind is simply empty: the schema check
 * has reported it. Only what a schema cannot see is reported from here.
 */
public record Fields(Tree.Branch branch, Problems problems) {

    private static final Pattern ID = Pattern.compile("[a-z0-9][a-z0-9-]{0,59}");

    /** No machine is older, and no agreement runs longer; anything beyond is a slip of the pen. */
    private static final LocalDate FIRST_DAY = LocalDate.of(1950, 1, 1);
    private static final LocalDate LAST_DAY = LocalDate.of(2149, 12, 31);

    /**
     * A file's keys and values, held against a schema; empty where it holds none.
     *
     * @param schema its resource, from the root of the class path
     * @param problems all that the file has against the schema is added here
     */
    public static Optional<Fields> checked(Tree tree, String schema, Problems problems) {
        problems.addAll(SchemaCheck.check(tree, schema));
        return tree instanceof Tree.Branch branch ? Optional.of(new Fields(branch, problems)) : Optional.empty();
    }

    public Place place() {
        return branch.place();
    }

    /** Where the key's value stands; the place of the whole when there is none. */
    public Place place(String key) {
        Tree value = branch.entries().get(key);
        return value == null ? place() : value.place();
    }

    public Optional<String> text(String key) {
        return leaf(key).filter(leaf -> leaf.kind() == Tree.Leaf.Kind.TEXT).map(Tree.Leaf::text)
                .filter(text -> !text.isEmpty());
    }

    /** A name as files refer to each other by it; anything else, above all a path, is empty. */
    public Optional<String> id(String key) {
        return text(key).filter(Fields::isId);
    }

    /** Whether a name is one by which files, and entries of the book, refer to each other. */
    public static boolean isId(String text) {
        return ID.matcher(text).matches();
    }

    public boolean flag(String key) {
        return leaf(key).filter(leaf -> leaf.kind() == Tree.Leaf.Kind.TRUTH).map(leaf -> leaf.text().equals("true"))
                .orElse(false);
    }

    public Optional<BigDecimal> number(String key) {
        return leaf(key).flatMap(Tree.Leaf::number);
    }

    /** A percentage from 0 to the most allowed. */
    public Optional<Percent> percent(String key, int most) {
        return number(key).filter(number -> number.signum() >= 0 && number.compareTo(BigDecimal.valueOf(most)) <= 0)
                .map(Percent::new);
    }

    public Optional<Integer> integer(String key) {
        return number(key).flatMap(number -> {
            try {
                return Optional.of(number.intValueExact());
            } catch (ArithmeticException fraction) {
                return Optional.empty();
            }
        });
    }

    /** Whether anything stands under a key. */
    public boolean has(String key) {
        return branch.entries().containsKey(key);
    }

    public Optional<Fields> child(String key) {
        return branch.entries().get(key) instanceof Tree.Branch child
                ? Optional.of(new Fields(child, problems))
                : Optional.empty();
    }

    public List<Fields> children(String key) {
        return items(key).flatMap(item -> item instanceof Tree.Branch child
                ? Stream.of(new Fields(child, problems))
                : Stream.empty()).toList();
    }

    /** The ids that the entries of a list give themselves, also of entries with faults of their own, in the file's order. */
    public Set<String> ids(String key) {
        return children(key).stream().flatMap(entry -> entry.text("id").stream())
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    public List<Tree.Leaf> leaves(String key) {
        return leaves(items(key));
    }

    /** The numbers of a list. */
    public List<BigDecimal> numbers(String key) {
        return leaves(key).stream().flatMap(leaf -> leaf.number().stream()).toList();
    }

    private static List<Tree.Leaf> leaves(Stream<Tree> items) {
        return items.flatMap(item -> item instanceof Tree.Leaf leaf ? Stream.of(leaf) : Stream.empty()).toList();
    }

    /** The keys of a free map. */
    public Map<String, Tree> entries() {
        return branch.entries();
    }

    /** A constant by its name in small letters and hyphens. */
    public <E extends Enum<E>> Optional<E> constant(String key, Class<E> type) {
        return text(key).flatMap(text -> constantOf(text, type));
    }

    /** Constants of a list; those that are none are left out. */
    public <E extends Enum<E>> List<E> constants(String key, Class<E> type) {
        return leaves(key).stream().flatMap(leaf -> constantOf(leaf.text(), type).stream()).toList();
    }

    public static <E extends Enum<E>> Optional<E> constantOf(String text, Class<E> type) {
        String name = text.toUpperCase(Locale.ROOT).replace('-', '_');
        return Arrays.stream(type.getEnumConstants()).filter(constant -> constant.name().equals(name)).findFirst();
    }

    /** A language that there are words for; any other is reported. */
    public Optional<Language> language(String key) {
        Optional<Language> language = text(key).flatMap(Language::ofTag);
        language.filter(wanted -> !Languages.isKnown(wanted))
                .ifPresent(wanted -> problems.add(Languages.unknown(place(key), wanted.tag())));
        return language.filter(Languages::isKnown);
    }

    public Optional<Wording> wording(String key) {
        return child(key).flatMap(all -> all.text("en").flatMap(english -> all.text("es")
                .map(spanish -> new Wording(english, spanish, Optional.of(all.furtherTexts(Set.of("en", "es")))))));
    }

    private Map<String, String> furtherTexts(Set<String> known) {
        Map<String, String> further = new HashMap<>();
        branch.entries().keySet().stream().filter(key -> !known.contains(key))
                .forEach(key -> text(key).ifPresent(text -> further.put(key, text)));
        return further;
    }

    /** A day; one that the calendar does not have is reported. */
    public Optional<LocalDate> day(String key) {
        return text(key).filter(text -> text.matches("\\d{4}-\\d{2}-\\d{2}")).flatMap(text -> {
            try {
                LocalDate day = LocalDate.parse(text);
                Optional<Problem> farOff = farOff(day, place(key));
                farOff.ifPresent(problems::add);
                return farOff.isPresent() ? Optional.empty() : Optional.of(day);
            } catch (DateTimeException noSuchDay) {
                problems.add(Code.NOT_ALLOWED, place(key), "there is no day " + text,
                        "a day of the calendar");
                return Optional.empty();
            }
        });
    }

    /** A problem when a day is none that a shop could mean. */
    public static Optional<Problem> farOff(LocalDate day, Place place) {
        return day.isBefore(FIRST_DAY) || day.isAfter(LAST_DAY)
                ? Optional.of(new Problem(Code.OUT_OF_RANGE, place, "the day is " + day,
                        "a day from " + FIRST_DAY + " to " + LAST_DAY))
                : Optional.empty();
    }

    /** A time of day. */
    public Optional<LocalTime> time(String key) {
        return text(key).filter(text -> text.matches("([01]\\d|2[0-3]):[0-5]\\d")).map(LocalTime::parse);
    }

    /** The time at which something ends; the end of the day, 24:00, reads as midnight. */
    public Optional<LocalTime> end(String key) {
        return text(key).filter("24:00"::equals).map(text -> LocalTime.MIDNIGHT).or(() -> time(key));
    }

    private Optional<Tree.Leaf> leaf(String key) {
        return branch.entries().get(key) instanceof Tree.Leaf leaf ? Optional.of(leaf) : Optional.empty();
    }

    private Stream<Tree> items(String key) {
        return branch.entries().get(key) instanceof Tree.Row row ? row.items().stream() : Stream.empty();
    }

    /** From a day on to {@code until}, unless that is no day, which was reported, or no later one, which is reported here. */
    public Optional<Period> period(LocalDate from) {
        Optional<LocalDate> until = day("until");
        if (until.isEmpty() && entries().containsKey("until")) {
            return Optional.empty();
        }
        if (until.isPresent() && !until.get().isAfter(from)) {
            problems().add(Code.WRONG_ORDER, place("until"), "ends on " + until.get() + ", begins on " + from,
                    "until is the first day outside, so it is later than from");
            return Optional.empty();
        }
        return Optional.of(new Period(from, until));
    }
}
