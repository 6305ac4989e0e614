package icequill.web;

import icequill.answer.ShopFacts;
import icequill.office.care.SettingsOffice;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.shop.Setting;
import icequill.shop.SettingsText;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.FormPage;
import icequill.web.page.Page;
import icequill.web.page.TypedFields;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Changes how the shop is set up. */
final class SettingsForm implements Page, FormPage {

    private static final String VERSION = "version";

    /**
     * What its page shows.
     *
     * @param version of the settings that stand there
     */
    public record Shown(List<String> settings, TypedFields typed, String version) {

        public Shown {
            settings = List.copyOf(settings);
        }
    }

    @Override
    public Answer answer(Asked asked) {
        return Answer.of(SettingsOffice.of(asked.book()).text(), now -> {
            Map<String, List<String>> fields = new LinkedHashMap<>();
            now.values().forEach((setting, value) -> fields.put(setting.key(), List.of(value)));
            return shown(new TypedFields(fields, List.of()), now);
        });
    }

    private static Answer shown(TypedFields typed, SettingsText now) {
        return new Answer.Shown("settings",
                new Shown(Setting.keys().stream().filter(key -> !key.equals(Setting.LOGO.key())).toList(),
                        typed, now.version()),
                now.values());
    }

    @Override
    public Validated<String> done(Asked asked) {
        SettingsOffice office = SettingsOffice.of(asked.book());
        Map<String, String> wanted = new LinkedHashMap<>();
        Setting.keys().forEach(key -> asked.text(key).ifPresent(value -> wanted.put(key, value)));
        Validated<ShopFacts> changed = office.change(wanted, asked.text(VERSION));
        return (asked.uploads().isEmpty()
                ? changed
                : changed.then(done -> office.logo(asked.uploads().getFirst().content()))).map(shop -> "/shop");
    }

    @Override
    public Answer again(Asked asked, List<Problem> problems) {
        Optional<SettingsText> now = SettingsOffice.of(asked.book()).text().found();
        return now
                .<Answer>map(text -> shown(
                        new TypedFields(asked.fields(), problems.stream().map(SettingsForm::atField).toList()), text))
                .orElseGet(() -> new Answer.Refused(problems));
    }

    /** At the field of the setting that it is about. */
    private static Problem atField(Problem problem) {
        String path = problem.place().path();
        return Setting.at(path).map(setting -> new Problem(problem.code(),
                new Place("", 0, setting.key()), problem.message(), problem.allowed())).orElse(problem);
    }
}
