package icequill.mail;

import icequill.mail.Returned.Action;
import icequill.mail.Returned.Failed;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The fields of a report of delivery (RFC 3464, section 2): first about the mail, then a paragraph for each recipient. */
final class DeliveryStatus {

    private static final int MOST_RECIPIENTS = 100;
    private static final int MOST_ADDRESS = 320;
    private static final int MOST_DIAGNOSTIC = 300;
    private static final Pattern STATUS = Pattern.compile("[245][.][0-9]{1,3}[.][0-9]{1,3}");
    private static final Pattern FOLDED = Pattern.compile("\n[ \t]+");
    private static final Pattern TYPE = Pattern.compile("^[A-Za-z0-9_-]+ *; *");

    private DeliveryStatus() {
    }

    /** Each recipient about whom it says enough, in its order. */
    static List<Failed> failed(String report) {
        String lines = FOLDED.matcher(report.replace("\r\n", "\n").replace('\r', '\n')).replaceAll(" ");
        return Arrays.stream(lines.split("\n[ \t]*\n+")).map(DeliveryStatus::fields).flatMap(DeliveryStatus::recipient)
                .limit(MOST_RECIPIENTS).toList();
    }

    private static Map<String, String> fields(String paragraph) {
        Map<String, String> fields = new LinkedHashMap<>();
        paragraph.lines().forEach(line -> {
            int colon = line.indexOf(':');
            if (colon > 0) {
                fields.putIfAbsent(line.substring(0, colon).strip().toLowerCase(Locale.ROOT),
                        line.substring(colon + 1).strip());
            }
        });
        return fields;
    }

    private static Stream<Failed> recipient(Map<String, String> fields) {
        String address = Optional.ofNullable(fields.get("original-recipient")).or(
                () -> Optional.ofNullable(fields.get("final-recipient"))).map(DeliveryStatus::value).orElse("");
        return action(fields.getOrDefault("action", "")).filter(action -> !address.isEmpty())
                .map(action -> new Failed(OneLine.shown(address, MOST_ADDRESS), action,
                        status(fields.getOrDefault("status", "")),
                        OneLine.shown(value(fields.getOrDefault("diagnostic-code", "")), MOST_DIAGNOSTIC)))
                .stream();
    }

    /** Without the type before it. */
    private static String value(String field) {
        return TYPE.matcher(field).replaceFirst("");
    }

    /** Comments in brackets may follow. */
    private static Optional<Action> action(String field) {
        String word = field.split("[ (]", 2)[0].toUpperCase(Locale.ROOT);
        return Arrays.stream(Action.values()).filter(action -> action.name().equals(word)).findFirst();
    }

    private static String status(String field) {
        String code = field.split("[ (]", 2)[0];
        return STATUS.matcher(code).matches() ? code : "";
    }
}
