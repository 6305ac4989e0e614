package icequill.office.care;

import icequill.answer.ShopFacts;
import icequill.files.disk.SafeFile;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.render.pdf.Logo;
import icequill.shop.BookForms;
import icequill.shop.Setting;
import icequill.shop.SettingsText;
import icequill.shop.ShopBook;
import icequill.shop.ShopFolder;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/** The office that keeps how the shop is set up. */
public final class SettingsOffice {

    private static final byte[] PNG = {(byte) 0x89, 'P', 'N', 'G'};
    private static final byte[] JPEG = {(byte) 0xff, (byte) 0xd8, (byte) 0xff};

    private final ShopBook book;

    private SettingsOffice(ShopBook book) {
        this.book = book;
    }

    public static SettingsOffice of(Path folder, Clock clock) {
        return of(ShopBook.byFolder(folder, clock));
    }

    /** Of a shop that is open; it goes by what lies in its folder. */
    public static SettingsOffice of(ShopBook book) {
        return new SettingsOffice(book.isShared() ? book.byItsFolder() : book);
    }

    /** How the shop is set up. */
    public Validated<ShopFacts> show() {
        ShopFolder folder = BookForms.shop(book);
        return folder.shop()
                .map(shop -> Validated.valid(ShopFacts.of(shop, folder.agreed(), book.folder(), book.isShared())))
                .orElseGet(() -> new Validated.Invalid<>(folder.problems()));
    }

    /** What shop.yaml says. */
    public Validated<SettingsText> text() {
        return SettingsText.of(book.folder());
    }

    /**
     * Changes settings and the picture on papers; all of it or nothing.
     *
     * @param wanted by key
     * @param picture empty where it stays
     * @param seen the version of the settings that was changed; empty for whatever is there
     */
    public Validated<ShopFacts> change(Map<String, String> wanted, Optional<byte[]> picture, Optional<String> seen) {
        Problems problems = new Problems();
        Optional<Map<Setting, String>> named = problems.take(named(wanted));
        Optional.ofNullable(wanted.get(Setting.LOGO.key())).filter(name -> picture.isEmpty())
                .flatMap(this::missing).ifPresent(problems::add);
        Optional<String> file = picture.flatMap(given -> problems.take(kind(given)));
        return problems.or(() -> {
            Map<Setting, String> all = new EnumMap<>(Setting.class);
            all.putAll(named.orElseThrow());
            file.ifPresent(name -> all.put(Setting.LOGO, name));
            return all;
        }).then(all -> text().then(now -> unchanged(now, seen)).then(now -> now.with(all)))
                .then(changed -> written(changed, picture, file))
                .then(done -> new SettingsOffice(book.byItsFolder()).show());
    }

    /** A picture that is named and not there: papers could not be printed. */
    private Optional<Problem> missing(String name) {
        Path file = book.folder().resolve(name).normalize();
        return file.startsWith(book.folder().normalize()) && Files.isRegularFile(file)
                ? Optional.empty()
                : Optional.of(new Problem(Code.UNREADABLE, new Place("", 0, Setting.LOGO.key()),
                        "there is no picture \"" + name + "\" in the shop folder",
                        "the name of a PNG or a JPEG that lies there"));
    }

    private Validated<Path> written(SettingsText changed, Optional<byte[]> picture, Optional<String> file) {
        return picture.map(given -> SafeFile.write(book.folder().resolve(file.orElseThrow()), given, true))
                .orElseGet(() -> Validated.valid(book.folder())).then(done -> changed.write());
    }

    private static Validated<SettingsText> unchanged(SettingsText now, Optional<String> seen) {
        return seen.filter(version -> !version.equals(now.version())).isEmpty()
                ? Validated.valid(now)
                : Validated.invalid(BookForms.changed("how the shop is set up"));
    }

    private static Validated<Map<Setting, String>> named(Map<String, String> wanted) {
        Problems problems = new Problems();
        Map<Setting, String> values = new EnumMap<>(Setting.class);
        wanted.forEach((key, value) -> Setting.of(key).ifPresentOrElse(setting -> values.put(setting, value),
                () -> problems.add(Problem.unknownName(Place.NOWHERE, "setting", key, Setting.keys()))));
        return problems.or(() -> values);
    }

    /** The name of its file, by how it begins: what the sender calls it may be anything. */
    private static Validated<String> kind(byte[] picture) {
        return named(picture).then(name -> wrong(picture).<Validated<String>>map(why -> Validated.invalid(
                new Problem(Code.NOT_ALLOWED, new Place("", 0, Setting.LOGO.key()),
                        "this picture cannot be used: " + why,
                        "a PNG or a JPEG that is whole")))
                .orElseGet(() -> Validated.valid(name)));
    }

    private static Optional<String> wrong(byte[] picture) {
        try {
            Path trial = Files.createTempFile("icequill-picture-", "");
            try {
                return Logo.wrong(Files.write(trial, picture));
            } finally {
                Files.delete(trial);
            }
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private static Validated<String> named(byte[] picture) {
        return begins(picture, PNG)
                ? Validated.valid("logo.png")
                : begins(picture, JPEG)
                        ? Validated.valid("logo.jpg")
                        : Validated.invalid(new Problem(Code.NOT_ALLOWED, new Place("", 0, "logo"),
                                "this is no picture that papers can have", "a PNG or a JPEG"));
    }

    private static boolean begins(byte[] picture, byte[] mark) {
        return picture.length > mark.length && Arrays.equals(picture, 0, mark.length, mark, 0, mark.length);
    }
}
