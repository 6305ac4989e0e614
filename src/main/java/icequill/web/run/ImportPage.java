package icequill.web.run;

import icequill.answer.ImportResult;
import icequill.office.register.ImportOffice;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.shop.ShopBook;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.FormPage;
import icequill.web.page.Page;
import icequill.web.page.Upload;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;

/** Takes forms and lists into the book: they are handed over and looked at first, then taken in. For many threads. */
public final class ImportPage implements Page, FormPage {

    /** As many as may be looked at before they are taken in; those handed over before are forgotten. */
    private static final int KEPT = 5;

    private final Runs runs;
    private final Map<String, List<Upload>> handed = new LinkedHashMap<>();

    public ImportPage(Runs runs) {
        this.runs = runs;
    }

    @Override
    public Answer answer(Asked asked) {
        return new Answer.Shown("import", RunKind.IMPORT, RunKind.IMPORT);
    }

    /** Looks at what was handed over. */
    @Override
    public Validated<String> done(Asked asked) {
        List<Upload> uploads = asked.uploads();
        return uploads.isEmpty()
                ? Validated.invalid(new Problem(Code.MISSING, new Place("", 0, "files"), "no file was chosen",
                        "files of forms (.yaml) or lists (.csv)"))
                : Validated.valid(kept(begun(RunKind.IMPORT_TRIAL, uploads), uploads));
    }

    /** The page that takes in what another run has looked at. */
    public FormPage taking() {
        return asked -> uploads(asked.part("run")).<Validated<String>>map(
                uploads -> Validated.valid(begun(RunKind.IMPORT, uploads)))
                .orElseGet(() -> Validated.invalid(new Problem(Code.UNKNOWN_NAME, Place.NOWHERE,
                        "these files are not here any more", "choose them again")));
    }

    private String begun(RunKind kind, List<Upload> uploads) {
        return runs.begin(kind, OptionalLong.empty(),
                (shop, progress) -> taken(shop, uploads, kind == RunKind.IMPORT_TRIAL, progress)
                        .map(RunResult.Taken::new));
    }

    private static Validated<ImportResult> taken(ShopBook shop, List<Upload> uploads, boolean isTrial,
            Progress progress) {
        try (HandedFiles files = HandedFiles.of(uploads)) {
            Validated<ImportResult> taken = ImportOffice.of(shop).run(files.files(), isTrial, progress);
            return taken.found().isPresent()
                    ? taken
                    : new Validated.Invalid<>(taken.problems().stream().map(files::told).toList());
        }
    }

    private synchronized String kept(String path, List<Upload> uploads) {
        if (handed.size() >= KEPT) {
            handed.keySet().stream().findFirst().ifPresent(handed::remove);
        }
        handed.put(path.substring(path.lastIndexOf('/') + 1), uploads);
        return path;
    }

    private synchronized Optional<List<Upload>> uploads(String run) {
        return Optional.ofNullable(handed.get(run));
    }
}
