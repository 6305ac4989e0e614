package icequill.office.register;

import icequill.files.disk.CsvFile;
import icequill.files.yaml.Column;
import icequill.files.yaml.GivenValue;
import icequill.problem.Code;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.shop.EntryId;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The rows of the lists that are to be imported, each by its id.
 *
 * @param machines by site and id, with a space between
 */
record ImportLists(Map<String, CsvFile.Row> customers, Map<String, CsvFile.Row> sites,
        Map<String, CsvFile.Row> machines, Map<String, CsvFile.Row> payments) {

    static final String CUSTOMER = "customer";
    static final String SITE = "site";
    static final String MACHINE = "machine";
    private static final String PAYMENT = "payment";
    static final String PARENT = "parent";

    /** What a list is of shows in its head: one of payments names payments, one of machines machines, one of sites sites, any other is of customers. */
    static ImportLists read(List<Path> lists, Problems problems) {
        Map<String, List<Path>> byKind = lists.stream().collect(Collectors.groupingBy(ImportLists::kind));
        return new ImportLists(
                rows(byKind.getOrDefault(CUSTOMER, List.of()), Column.CUSTOMER, List.of(CUSTOMER), List.of(PARENT),
                        problems),
                rows(byKind.getOrDefault(SITE, List.of()), Column.SITE, List.of(SITE), List.of(CUSTOMER), problems),
                rows(byKind.getOrDefault(MACHINE, List.of()), Column.MACHINE, List.of(SITE, MACHINE), List.of(),
                        problems),
                rows(byKind.getOrDefault(PAYMENT, List.of()), Column.LISTED_PAYMENT, List.of(PAYMENT), List.of(),
                        problems));
    }

    private static String kind(Path list) {
        Set<String> head = CsvFile.head(list);
        return Stream.of(PAYMENT, MACHINE, SITE).filter(head::contains).findFirst().orElse(CUSTOMER);
    }

    private static Map<String, CsvFile.Row> rows(List<Path> files, List<Column> columns, List<String> ids,
            List<String> others, Problems problems) {
        Map<String, CsvFile.Row> rows = new LinkedHashMap<>();
        Set<String> known = new LinkedHashSet<>();
        Stream.of(ids.stream(), others.stream(), columns.stream().map(Column::name)).flatMap(names -> names)
                .forEach(known::add);
        files.forEach(list -> CsvFile.read(list, known, new HashSet<>(ids), problems)
                .forEach(row -> add(row, ids, rows, problems)));
        return rows;
    }

    private static void add(CsvFile.Row row, List<String> ids, Map<String, CsvFile.Row> rows, Problems problems) {
        boolean right = true;
        for (String column : ids) {
            String id = row.cell(column).orElse("");
            Optional<Problem> wrong = EntryId.problem(id, row.place(column));
            wrong.ifPresent(problems::add);
            right &= wrong.isEmpty();
        }
        String key = String.join(" ", ids.stream().map(column -> row.cell(column).orElse("")).toList());
        if (right && rows.putIfAbsent(key, row) != null) {
            problems.add(Code.DUPLICATE_NAME, row.place(ids.getLast()), "\"" + key + "\" stands here a second time",
                    "one row for each");
        }
    }

    /** The cells of a row that hold something. */
    static Map<Column, GivenValue> values(CsvFile.Row row, List<Column> columns) {
        Map<Column, GivenValue> values = new LinkedHashMap<>();
        columns.forEach(column -> row.cell(column.name())
                .ifPresent(text -> values.put(column, new GivenValue(text, row.place(column.name())))));
        return values;
    }
}
