import icequill.cli.terminal.Completed;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.stream.Stream;
import org.asciidoctor.Asciidoctor;
import org.asciidoctor.Attributes;
import org.asciidoctor.Options;
import org.asciidoctor.SafeMode;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.codegen.docgen.manpage.ManPageGenerator;

/**
 * Writes what the help says as a page of the manual for each command (AsciiDoc), and as the completion that bash and zsh offer. Run by
 * the build of the packages as a single source file, with the program on the class path.
 */
public final class MakeManual {

    private MakeManual() {
    }

    public static void main(String[] args) throws Exception {
        Path pages = Path.of(args[0]);
        Path completion = Path.of(args[1]);
        CommandLine program = icequill.cli.Main.commands(Clock.systemUTC());
        Files.createDirectories(pages);
        Path sources = Files.createTempDirectory("icequill-manual");
        int status = ManPageGenerator.generateManPage(sources.toFile(), (File) null, new boolean[0], false,
                program.getCommandSpec());
        if (status != 0) {
            throw new IOException("no page of the manual was made: " + status);
        }
        try (Asciidoctor asciidoctor = Asciidoctor.Factory.create(); Stream<Path> files = Files.list(sources)) {
            for (Path source : files.sorted().toList()) {
                asciidoctor.convertFile(source.toFile(), Options.builder().backend("manpage").safe(SafeMode.UNSAFE)
                        .attributes(Attributes.builder().attribute("reproducible").build()).toDir(pages.toFile()).build());
                Files.delete(source);
            }
        }
        Files.delete(sources);
        Files.createDirectories(completion.getParent());
        Files.writeString(completion, asking(AutoComplete.bash("icequill", program)));
    }

    /** The marks for names of the book become questions to the program, asked when somebody presses TAB. */
    private static String asking(String script) {
        return script.replaceAll("\\(\"" + Completed.MARK + "([a-z]+)\"\\)", "(\\$(icequill names $1 2>/dev/null))");
    }
}
