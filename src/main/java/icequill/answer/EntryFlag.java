package icequill.answer;

import icequill.files.yaml.Column;
import icequill.files.yaml.GivenValue;
import icequill.problem.Place;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A flag by which one value of a customer, site or machine is given, and what it is about. */
public record EntryFlag(String name, String about) {

    public static final List<EntryFlag> CUSTOMER = of(Column.CUSTOMER);
    public static final List<EntryFlag> SITE = of(Column.SITE);
    public static final List<EntryFlag> MACHINE = of(Column.MACHINE);
    public static final List<EntryFlag> PAYMENT = of(Column.PAYMENT);
    /** Those of a contact, but for the name. */
    public static final List<EntryFlag> CONTACT = of(Column.CONTACT);

    private static List<EntryFlag> of(List<Column> columns) {
        return columns.stream().map(column -> new EntryFlag(column.flag(), column.about())).toList();
    }

    /** Values by their flags as values by their columns. */
    public static Map<Column, GivenValue> values(Map<String, String> flags, List<Column> columns) {
        Map<Column, GivenValue> values = new LinkedHashMap<>();
        columns.stream().filter(column -> flags.containsKey(column.flag())).forEach(column -> values.put(column,
                new GivenValue(flags.getOrDefault(column.flag(), ""), new Place("", 0, column.flag()))));
        return values;
    }
}
