package icequill.shop;

import icequill.files.disk.Hash;
import icequill.files.disk.SafeFile;
import icequill.files.form.ShopReader;
import icequill.files.yaml.Fields;
import icequill.files.yaml.YamlReader;
import icequill.files.yaml.YamlText;
import icequill.party.Shop;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** The text of a shop.yaml, of which settings can be changed; comments, order and all else stay as they are. */
public final class SettingsText {

    private final Path file;
    private final String text;

    private SettingsText(Path file, String text) {
        this.file = file;
        this.text = text;
    }

    /** That of a shop; what is wrong with it where it cannot be read. */
    public static Validated<SettingsText> of(Path folder) {
        Path file = folder.resolve(ShopSettings.SHOP);
        try {
            return new SettingsText(file, Files.readString(file)).checked();
        } catch (IOException unreadable) {
            return Validated.invalid(new Problem(Code.UNREADABLE, Place.ofFile(ShopSettings.SHOP),
                    "the file cannot be read: " + unreadable, "a file that may be read"));
        }
    }

    private Validated<SettingsText> checked() {
        Problems problems = new Problems();
        Optional<Shop> read = YamlReader.parse(text, ShopSettings.SHOP, problems)
                .flatMap(tree -> Fields.checked(tree, "/icequill/schema/shop.schema.json", problems))
                .flatMap(ShopReader::read);
        return problems.or(read::isPresent).map(right -> this);
    }

    /** By which it is seen that somebody changed it meanwhile. */
    public String version() {
        return Hash.of(text.getBytes(StandardCharsets.UTF_8));
    }

    /** What stands there; settings that are not set are left out. */
    public Map<Setting, String> values() {
        YamlText yaml = YamlText.of(text);
        Map<Setting, String> values = new EnumMap<>(Setting.class);
        for (Setting setting : Setting.values()) {
            yaml.value(setting.path()).ifPresent(value -> values.put(setting, value.text()));
        }
        return values;
    }

    /** The same with other settings, or what would be wrong with it. */
    public Validated<SettingsText> with(Map<Setting, String> others) {
        YamlText yaml = YamlText.of(text);
        Map<YamlText.Value, String> changes = new LinkedHashMap<>();
        Map<Setting, String> added = new EnumMap<>(Setting.class);
        others.forEach((setting, value) -> yaml.value(setting.path())
                .ifPresentOrElse(there -> changes.put(there, written(value)), () -> added.put(setting, value)));
        String changed = yaml.with(changes);
        for (Map.Entry<Setting, String> one : added.entrySet()) {
            YamlText now = YamlText.of(changed);
            Optional<YamlText.Value> beside = now.value(beside(one.getKey()));
            changed = now.with(beside.or(() -> now.value(Setting.NAME.path())).orElseThrow(), key(one.getKey()),
                    written(one.getValue()));
        }
        return new SettingsText(file, changed).checked();
    }

    /** What stands on the level of a setting wherever it is set at all. */
    private static String beside(Setting setting) {
        return setting.path().startsWith("address.") ? "address.city" : Setting.NAME.path();
    }

    private static String key(Setting setting) {
        return setting.path().substring(setting.path().lastIndexOf('.') + 1);
    }

    /** Numbers and plain words as they are, all else within quotation marks. */
    private static String written(String value) {
        return value.matches("[0-9]{1,4}|[A-Za-z]+") && !value.matches("(?i)true|false|null|yes|no|on|off|y|n")
                ? value
                : "\"" + value.replace("\\", "\\\\").replace("\"", "\\\"").replaceAll("\\p{Cntrl}", " ") + "\"";
    }

    /** Puts it in the place of the shop's. */
    public Validated<Path> write() {
        return SafeFile.write(file, text.getBytes(StandardCharsets.UTF_8), true);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof SettingsText same && text.equals(same.text) && file.equals(same.file);
    }

    @Override
    public int hashCode() {
        return Objects.hash(file, text);
    }
}
