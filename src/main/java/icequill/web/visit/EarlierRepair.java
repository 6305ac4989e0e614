package icequill.web.visit;

import java.util.Map;

/**
 * A repair that an earlier visit recommended, as the value of a field has it.
 *
 * @param visit by id, which holds no space
 * @param recommended in the words of that visit
 */
record EarlierRepair(String visit, String recommended) {

    static EarlierRepair of(String field) {
        int end = field.indexOf(' ');
        return end < 0
                ? new EarlierRepair(field, "")
                : new EarlierRepair(field.substring(0, end), field.substring(end + 1));
    }

    static EarlierRepair of(Told form) {
        return new EarlierRepair(form.text("visit").orElse(""), form.text("recommended").orElse(""));
    }

    String text() {
        return visit + " " + recommended;
    }

    Map<String, Object> form() {
        return Map.of("visit", visit, "recommended", recommended);
    }
}
