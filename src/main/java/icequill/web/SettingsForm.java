package icequill.web;

import icequill.office.care.SettingsOffice;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.shop.Setting;
import icequill.shop.SettingsText;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.FormPage;
import icequill.web.page.Page;
import icequill.web.page.TypedFields;
import icequill.web.page.Upload;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Changes how the shop is set up. */
final class SettingsForm implements Page, FormPage {

    private static final String VERSION = "version";

    /**
     * What its page shows.
     *
     * @param version of the settings that stand there
     * @param theirs what stands there now where it is something else than was typed, after somebody else changed it
     * @param isShared whether other offices go by them, once they are in force
     */
    public record Shown(List<String> settings, TypedFields typed, String version, Map<String, String> theirs,
            boolean isShared) {

        public Shown {
            settings = List.copyOf(settings);
            theirs = Collections.unmodifiableMap(new LinkedHashMap<>(theirs));
        }
    }

    @Override
    public Answer answer(Asked asked) {
        return Answer.of(SettingsOffice.of(asked.book()).text(), now -> {
            Map<String, List<String>> fields = new LinkedHashMap<>();
            now.values().forEach((setting, value) -> fields.put(setting.key(), List.of(value)));
            return shown(asked, new TypedFields(fields, List.of()), now, Map.of());
        });
    }

    private static Answer shown(Asked asked, TypedFields typed, SettingsText now, Map<String, String> theirs) {
        return new Answer.Shown("settings",
                new Shown(Setting.keys().stream().filter(key -> !key.equals(Setting.LOGO.key())).toList(), typed,
                        now.version(), theirs, asked.book().isShared()),
                now.values());
    }

    @Override
    public Validated<String> done(Asked asked) {
        SettingsOffice office = SettingsOffice.of(asked.book());
        Problems problems = new Problems();
        Map<String, String> wanted = new LinkedHashMap<>();
        Set<String> set = office.text().found().map(now -> now.values().keySet().stream().map(Setting::key)
                .collect(Collectors.toSet())).orElse(Set.of());
        Setting.keys().forEach(key -> asked.text(key).ifPresentOrElse(value -> wanted.put(key, value), () -> {
            if (asked.fields().containsKey(key) && set.contains(key)) {
                problems.add(Code.MISSING, new Place("", 0, key), "this cannot be empty", "what it is to be");
            }
        }));
        Optional<byte[]> picture = asked.uploads().stream().findFirst().map(Upload::content);
        return problems.or(() -> wanted).then(all -> office.change(all, picture, asked.text(VERSION)))
                .map(shop -> "/shop");
    }

    @Override
    public Answer again(Asked asked, List<Problem> problems) {
        Optional<SettingsText> now = SettingsOffice.of(asked.book()).text().found();
        return now.<Answer>map(text -> shown(asked,
                new TypedFields(asked.fields(), problems.stream().map(SettingsForm::atField).toList()), text,
                asked.text(VERSION).filter(text.version()::equals).isPresent() ? Map.of() : theirs(asked, text)))
                .orElseGet(() -> new Answer.Refused(problems));
    }

    private static Map<String, String> theirs(Asked asked, SettingsText now) {
        Map<String, String> theirs = new LinkedHashMap<>();
        now.values().forEach((setting, value) -> asked.text(setting.key()).filter(mine -> !mine.equals(value))
                .ifPresent(mine -> theirs.put(setting.key(), value)));
        return theirs;
    }

    /** At the field of the setting that it is about. */
    private static Problem atField(Problem problem) {
        String path = problem.place().path();
        return Setting.at(path).map(setting -> new Problem(problem.code(),
                new Place("", 0, setting.key()), problem.message(), problem.allowed())).orElse(problem);
    }
}
