package icequill.web.run;

import icequill.answer.mail.MailList;
import icequill.office.mail.ReturnedOffice;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.shop.ShopBook;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.FormPage;
import icequill.web.page.Page;
import icequill.web.page.TypedFields;
import icequill.web.page.Upload;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

/** Takes what mail servers sent back, as files that are handed over or of the folder that shop.yaml sets, and notes which mails came back. */
public final class ReturnedPage implements Page, FormPage {

    private final Runs runs;

    public ReturnedPage(Runs runs) {
        this.runs = runs;
    }

    /**
     * What its page shows.
     *
     * @param folder empty where none is set
     */
    public record Shown(Optional<String> folder, TypedFields typed) {}

    @Override
    public Answer answer(Asked asked) {
        return again(asked, List.of());
    }

    @Override
    public Answer again(Asked asked, List<Problem> problems) {
        return Answer.of(ReturnedOffice.of(asked.book()).returned(), mails -> new Answer.Shown("mail-returned",
                new Shown(ReturnedOffice.of(asked.book()).folder(), new TypedFields(asked.fields(), problems)),
                mails));
    }

    @Override
    public Validated<String> done(Asked asked) {
        if (asked.text("folder").isPresent()) {
            return Validated.valid(begun((shop, progress) -> ReturnedOffice.of(shop).readFolder()
                    .map(RunResult.Sent::new)));
        }
        List<Upload> uploads = asked.uploads();
        return uploads.isEmpty()
                ? Validated.invalid(new Problem(Code.MISSING, new Place("", 0, "files"), "no file was chosen",
                        "mails that came back (.eml)"))
                : Validated.valid(begun((shop, progress) -> read(shop, uploads).map(RunResult.Sent::new)));
    }

    private String begun(Work work) {
        return runs.begin(RunKind.RETURNED, OptionalLong.empty(), work);
    }

    private static Validated<MailList> read(ShopBook shop, List<Upload> uploads) {
        try (HandedFiles files = HandedFiles.of(uploads)) {
            return ReturnedOffice.of(shop).read(files.files()).map(read -> new MailList(read.mails(),
                    read.problems().stream().map(files::told).toList()));
        }
    }
}
