package icequill.files.form;

import icequill.files.yaml.Fields;
import icequill.files.yaml.Tree;
import icequill.files.yaml.YamlReader;
import icequill.mail.Login;
import icequill.mail.MailServer;
import icequill.mail.Security;
import icequill.mail.Timeouts;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How the shop mails its papers, as shop.yaml says.
 *
 * @param server empty where mails are laid into a folder, for a person to send
 * @param from the address that they come from; the shop's own where nothing else is set, and empty where shop.yaml cannot be read
 * @param perMinute how many at most
 * @param standing papers of the shop that customers may want along
 * @param byItself what the office sends while it is open, without being asked
 * @param returned the folder, from the shop folder on, into which somebody saves what mail servers sent back; empty where none is set
 */
public record MailSettings(Optional<Fields> server, Optional<String> from, int perMinute, List<Standing> standing,
        ByItself byItself, Optional<String> returned) {

    /** What the office sends while it is open, without being asked. */
    public enum ByItself {
        NOTHING,
        /** What somebody has sent and the server has put off. */
        RETRIES,
        /** What waits, whether somebody has sent it or not. */
        EVERYTHING
    }

    /** The variable of the environment that may hold the password. */
    static final String VARIABLE = "ICEQUILL_MAIL_PASSWORD";

    private static final String MAIL = "mail";
    /** Common practice: what small mail servers take from one sender without holding back. */
    private static final int PER_MINUTE = 30;
    private static final MailSettings USUAL = usual(Optional.empty());
    private static final int STARTTLS_PORT = 587;
    private static final int TLS_PORT = 465;

    /**
     * A paper that stays the same for all customers, such as a tax form.
     *
     * @param title for the customer to read
     * @param file from the shop folder on
     * @param expires its last day; empty where it has none
     */
    public record Standing(String name, String title, String file, Optional<LocalDate> expires) {}

    public MailSettings {
        standing = List.copyOf(standing);
    }

    /** Those of a shop folder, as far as shop.yaml can be read; its faults show when the shop itself is read. */
    public static MailSettings of(Path folder) {
        Path file = folder.resolve("shop.yaml");
        return Files.exists(file)
                ? YamlReader.read(file, "shop.yaml", new Problems())
                        .map(tree -> tree instanceof Tree.Branch branch
                                ? read(new Fields(branch, new Problems()))
                                : USUAL)
                        .orElse(USUAL)
                : USUAL;
    }

    private static MailSettings read(Fields shop) {
        Optional<String> own = shop.text("email");
        return shop.child(MAIL).map(fields -> read(fields, own))
                .orElseGet(() -> usual(own));
    }

    private static MailSettings usual(Optional<String> from) {
        return new MailSettings(Optional.empty(), from, PER_MINUTE, List.of(), ByItself.RETRIES, Optional.empty());
    }

    private static MailSettings read(Fields fields, Optional<String> own) {
        return new MailSettings(fields.child("server"), fields.text("from").or(() -> own),
                fields.integer("perMinute").orElse(PER_MINUTE),
                fields.children("standing").stream()
                        .flatMap(entry -> entry.id("name").flatMap(name -> entry.text("file")
                                .map(file -> new Standing(name, entry.text("title").orElse(name), file,
                                        entry.day("expires"))))
                                .stream())
                        .toList(),
                fields.constant("byItself", ByItself.class).orElse(ByItself.RETRIES), fields.text("returned"));
    }

    /** The server with its password, where one is set; of the environment where no file is named. */
    public Validated<Optional<MailServer>> server(Path folder) {
        return server(folder, System.getenv());
    }

    Validated<Optional<MailServer>> server(Path folder, Map<String, String> environment) {
        return server.map(fields -> password(fields, folder, environment)
                .then(word -> server(fields, folder, word)).map(Optional::of))
                .orElse(Validated.valid(Optional.empty()));
    }

    private static Validated<MailServer> server(Fields fields, Path folder, Optional<String> password) {
        Security security = fields.constant("security", Security.class).orElse(Security.STARTTLS);
        Optional<Login> login = fields.text("user").map(user -> new Login(user,
                () -> password.orElse("").toCharArray()));
        Place place = new Place("shop.yaml", 0, "mail.server");
        return MailServer.of(fields.text("host").orElse(""),
                fields.integer("port").orElse(security == Security.TLS ? TLS_PORT : STARTTLS_PORT), security, login,
                fields.text("trusted").map(folder::resolve), Timeouts.USUAL, place);
    }

    private static Validated<Optional<String>> password(Fields fields, Path folder, Map<String, String> environment) {
        return passwordFile(fields, folder).map(file -> file.line().map(Optional::of)).orElseGet(() -> Validated
                .valid(Optional.ofNullable(environment.get(VARIABLE)).filter(word -> !word.isEmpty())));
    }

    private static Optional<PasswordFile> passwordFile(Fields fields, Path folder) {
        return fields.text("passwordFile")
                .map(name -> new PasswordFile(folder.resolve(name), "mail.server.passwordFile"));
    }

    /** What stands where others on this machine may read it. */
    public Optional<Problem> readable(Path folder) {
        return server.flatMap(fields -> passwordFile(fields, folder)).flatMap(PasswordFile::readable);
    }
}
