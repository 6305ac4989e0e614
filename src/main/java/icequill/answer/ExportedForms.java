package icequill.answer;

import icequill.files.disk.SafeFile;
import icequill.files.yaml.Tree;
import icequill.files.yaml.YamlWriter;
import icequill.problem.Validated;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;

/** What the book holds, as forms that it takes in again. */
public record ExportedForms(List<Tree.Branch> forms) {

    public ExportedForms {
        forms = List.copyOf(forms);
    }

    /** One document a form. */
    public String yaml() {
        return YamlWriter.text(forms);
    }

    /**
     * Writes them into a file.
     *
     * @param replace whether an existing file may be replaced
     */
    public Validated<Path> write(Path file, boolean replace) {
        return SafeFile.write(file, yaml().getBytes(StandardCharsets.UTF_8), replace);
    }
}
