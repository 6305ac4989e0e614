package icequill.web.visit;

import icequill.web.page.Typing;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What was put in, what made the work dearer, and whatever else is charged in one's own words. */
record LineFields(Typing typing, Kept.Rows kept) {

    private static final Set<String> SHOWN = Set.of("material", "modifier", "text", "class", "price", "amount",
            "machine", "outcome");

    private static final String BLOCK = "block";
    private static final String MINUTES = "minutes";
    /** How the field ends that takes the minutes of a block. */
    private static final String AHEAD = "ahead";

    /** A kind of line: the letters that its fields begin with, and the key of what is charged. */
    private enum Kind {
        PART("line", "material"), CIRCUMSTANCE("modifier", "modifier"), OWN("own", "text");

        private final String row;
        private final String key;

        Kind(String row, String key) {
            this.row = row;
            this.key = key;
        }

        String what(int i) {
            return row + i + (this == OWN ? "text" : "part");
        }

        /** How the fields of a row end in which something can be said. */
        String[] said() {
            return this == OWN ? new String[]{"text", "price", "amount"} : new String[]{"part", "amount"};
        }
    }

    List<Map<String, Object>> read() {
        List<Map<String, Object>> lines = new ArrayList<>();
        for (Kind kind : Kind.values()) {
            for (int i = 0; i < typing.rows(kind.row, kind.said()); i++) {
                read(kind, i, lines);
            }
        }
        return lines;
    }

    private void read(Kind kind, int i, List<Map<String, Object>> lines) {
        String row = kind.row + i;
        Optional<String> what = typing.text(kind.what(i));
        typing.unnamed(kind.what(i), List.of(row + "amount", row + "price"), switch (kind) {
        case PART -> "no part is named for this amount";
        case CIRCUMSTANCE -> "it is not said what this is the number of";
        case OWN -> "it is not said what this price is for";
        });
        if (what.isPresent()) {
            String path = "lines[" + lines.size() + "]";
            Map<String, Object> line = new LinkedHashMap<>(Map.of(kind.key, what.get()));
            Map<String, Object> more = kept.next(kind.key, what.get()).but(SHOWN);
            if (kind == Kind.OWN) {
                own(row, line, more.containsKey("cost"));
            }
            Optional<BigDecimal> amount = typing.number(row + "amount");
            if (kind != Kind.CIRCUMSTANCE || amount.isPresent()) {
                line.put("amount", amount.orElse(BigDecimal.ONE));
            }
            typing.text(row + "machine").ifPresent(machine -> line.put("machine", machine));
            typing.text(row + "outcome").ifPresent(outcome -> line.put("outcome", outcome));
            line.putAll(more);
            if (kind == Kind.OWN) {
                ahead(row, line);
            }
            typing.place(path, kind.what(i));
            typing.place(path + ".amount", row + "amount");
            typing.place(path + ".price", row + "price");
            typing.place(path + ".block", row + AHEAD);
            typing.place(path + ".block.minutes", row + AHEAD);
            lines.add(line);
        }
    }

    /** Where the book has what it costs, and a markup, it needs no price. */
    private void own(String row, Map<String, Object> line, boolean hasCost) {
        typing.text(row + "class").ifPresent(of -> line.put("class", of));
        Optional<BigDecimal> price = typing.number(row + "price");
        price.ifPresent(found -> line.put("price", found));
        if (typing.text(row + "price").isEmpty() && !hasCost) {
            typing.missing(row + "price", "its price is missing");
        }
    }

    /** Minutes that are sold ahead; what else the book has of a block stays with it. */
    private void ahead(String row, Map<String, Object> line) {
        Map<Object, Object> block = new LinkedHashMap<>(line.get(BLOCK) instanceof Map<?, ?> had ? had : Map.of());
        block.remove(MINUTES);
        typing.number(row + AHEAD).ifPresentOrElse(minutes -> block.put(MINUTES, minutes), () -> {
            if (!block.containsKey("visits")) {
                block.clear();
            }
        });
        line.remove(BLOCK);
        if (!block.isEmpty()) {
            line.put(BLOCK, block);
        }
    }

    static void fill(Told form, Filling filling) {
        for (Kind kind : Kind.values()) {
            List<Told> rows = form.rows("lines").stream().filter(line -> line.text(kind.key).isPresent()).toList();
            for (int i = 0; i < rows.size(); i++) {
                Told line = rows.get(i);
                String row = kind.row + i;
                filling.put(kind.what(i), line.text(kind.key));
                List.of("class", "price", "amount", "machine", "outcome")
                        .forEach(key -> filling.put(row + key, line.text(key)));
                filling.put(row + AHEAD, line.part(BLOCK).text(MINUTES));
            }
        }
    }
}
