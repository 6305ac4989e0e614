package icequill.web.run;

import icequill.answer.AuditSheet;
import icequill.answer.ImportResult;
import icequill.answer.mail.MailList;
import icequill.answer.paper.IssuedPapers;

/** What long work came to. */
public sealed interface RunResult {

    /** Papers that were issued, and why others were not. */
    record Issued(IssuedPapers.Data issued) implements RunResult {}

    /** Mails to which something happened, and why nothing did to others. */
    record Sent(MailList sent) implements RunResult {}

    /** How the book was found. */
    record Audited(AuditSheet audit) implements RunResult {}

    /** Forms that were taken in, or would be. */
    record Taken(ImportResult taken) implements RunResult {}
}
