package icequill.oracle;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Files of rates with the prices of a rate sheet in them, as if they had been written so. */
record LaidOver(Yaml sheet) {

    Yaml labor(Yaml usual) {
        Set<String> bands = Set.copyOf(usual.list("bands").stream().map(band -> band.text("id")).toList());
        return entries(usual, "grades", sheet.list("labor"), "grade", (grade, agreed) -> {
            Map<String, Object> all = new LinkedHashMap<>();
            grade.map().forEach((key, value) -> all.put(String.valueOf(key), value));
            if (agreed.has("hourly")) {
                all.put("hourly", merged(grade.child("hourly"), agreed.child("hourly")));
                if (grade.has("firstHour")) {
                    Map<String, Object> first = merged(grade.child("firstHour"), new Yaml(Map.of()));
                    agreed.child("hourly").map().keySet().forEach(band -> first.remove(String.valueOf(band)));
                    all.put("firstHour", first);
                }
            }
            if (agreed.has("firstHour")) {
                all.put("firstHour", merged(new Yaml((Map<?, ?>) all.getOrDefault("firstHour", Map.of())),
                        agreed.child("firstHour")));
            }
            if (agreed.has("minimum")) {
                Map<String, Object> minimum = new LinkedHashMap<>();
                bands.forEach(band -> minimum.put(band, grade.byBand("minimum", band)));
                minimum.putAll(merged(new Yaml(Map.of()), agreed.child("minimum")));
                all.put("minimum", minimum);
            }
            return new Yaml(all);
        });
    }

    Yaml serviceCall(Yaml usual) {
        Yaml agreed = sheet.has("serviceCall") ? sheet.child("serviceCall") : new Yaml(Map.of());
        Yaml zones = entries(usual, "zones", agreed.list("zones"), "zone", (zone, own) -> new Yaml(
                merged(zone, new Yaml(Map.of("prices", merged(zone.child("prices"), own.child("prices")))))));
        return agreed.has("includes")
                ? new Yaml(merged(zones, new Yaml(Map.of("includes", agreed.number("includes")))))
                : zones;
    }

    Yaml materials(Yaml usual) {
        return entries(usual, "items", sheet.list("materials"), "material",
                (item, own) -> new Yaml(merged(item, new Yaml(Map.of("price", own.number("price"))))));
    }

    private interface Over {
        Yaml of(Yaml usual, Yaml agreed);
    }

    private static Yaml entries(Yaml usual, String key, List<Yaml> agreed, String id, Over over) {
        List<Map<?, ?>> all = new ArrayList<>();
        usual.list(key).forEach(entry -> all.add(agreed.stream()
                .filter(own -> own.text(id).equals(entry.text("id"))).findFirst()
                .map(own -> over.of(entry, own)).orElse(entry).map()));
        return new Yaml(merged(usual, new Yaml(Map.of(key, all))));
    }

    private static Map<String, Object> merged(Yaml usual, Yaml own) {
        Map<String, Object> all = new LinkedHashMap<>();
        usual.map().forEach((key, value) -> all.put(String.valueOf(key), value));
        own.map().forEach((key, value) -> all.put(String.valueOf(key), value));
        return all;
    }
}
