package icequill.cli.book;

import icequill.cli.terminal.ExitCode;
import icequill.files.form.FormKind;
import icequill.shop.ShippedFiles;
import java.util.Iterator;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Prints a form to fill in. */
@Command(name = "form", mixinStandardHelpOptions = true, description = "Prints a form to fill in, with what may stand in it, for: icequill import.", footerHeading = "%nExamples:%n", footer = {
        "  icequill form site > mill-lane.yaml", "  icequill form visit > today.yaml"})
public final class FormCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "WHAT", completionCandidates = Kinds.class, description = "One of: ${COMPLETION-CANDIDATES}")
    private String kind = "";

    /** The kinds there is a form of. */
    static final class Kinds implements Iterable<String> {
        @Override
        public Iterator<String> iterator() {
            return keys().iterator();
        }

        private static List<String> keys() {
            return Stream.of(FormKind.values()).filter(kind -> ShippedFiles.form(kind).isPresent()).map(FormKind::key)
                    .toList();
        }
    }

    @Override
    public Integer call() {
        String form = FormKind.of(kind).flatMap(ShippedFiles::form).orElseThrow(() -> new ParameterException(
                spec.commandLine(), "no form is called \"" + kind + "\": one of " + String.join(", ", Kinds.keys())));
        spec.commandLine().getOut().print(form);
        spec.commandLine().getOut().flush();
        return ExitCode.OK.status();
    }
}
