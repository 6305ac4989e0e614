package icequill.web;

import icequill.office.care.PaperOffice;
import icequill.problem.Validated;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.Page;

/** A paper as a file: its PDF as it was issued, the same without data within, or its data as XML. */
enum PaperFilePage implements Page {
    ISSUED {
        @Override
        public Answer answer(Asked asked) {
            return sent(PaperOffice.of(asked.book()).file(asked.part("number")), ".pdf");
        }
    },
    BARE {
        @Override
        public Answer answer(Asked asked) {
            return sent(PaperOffice.of(asked.book()).bare(asked.part("number")), "");
        }
    },
    UBL {
        @Override
        public Answer answer(Asked asked) {
            return Answer.of(PaperOffice.of(asked.book()).ubl(asked.part("number")),
                    file -> new Answer.Xml(file.getValue(), file.getKey()));
        }
    };

    private static Answer sent(Validated<PaperOffice.IssuedFile> file, String ending) {
        return Answer.of(file, found -> new Answer.Sent(found.pdf(), found.number() + ending));
    }
}
