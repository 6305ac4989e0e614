package icequill.mail;

import jakarta.mail.AuthenticationFailedException;
import jakarta.mail.MessagingException;
import java.io.EOFException;
import java.net.SocketException;
import java.net.SocketTimeoutException;
import java.net.UnknownHostException;
import java.security.cert.CertificateException;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.net.ssl.SSLException;
import org.eclipse.angus.mail.util.MailConnectException;

/** What became of a mail, from the last thing that was said and its answer; by the first digit, as RFC 5321, section 4.2.1 has it. */
final class Verdict {

    /** RFC 4954, section 6. */
    private static final int LOGIN_REQUIRED = 530;
    private static final List<Class<? extends Exception>> LINE_FAILED = List.of(EOFException.class,
            SocketException.class, SocketTimeoutException.class);

    private Verdict() {
    }

    /** @param failure what ended the talk; asked only where no answer decides */
    static Submission of(Heard heard, MessagingException failure) {
        if (heard.code() == LOGIN_REQUIRED && heard.step() != Step.END) {
            return new Submission.Unusable(Why.LOGIN_NEEDED, heard.answer());
        }
        return switch (heard.step()) {
        case GREETING -> encrypted(failure).orElseGet(() -> ofServer(heard, Why.SERVER_REFUSES, unreached(failure)));
        case HELLO -> heard.code() / 100 == 2 ? offered(failure) : ofServer(heard, Why.SERVER_REFUSES, Why.BROKEN_OFF);
        case ENCRYPTION -> encrypted(failure).orElseGet(() -> heard.code() / 100 == 2
                ? new Submission.PutOff(Why.BROKEN_OFF, "")
                : ofServer(heard, Why.NO_STARTTLS, Why.BROKEN_OFF));
        case LOGIN -> ofServer(heard, Why.LOGIN_REFUSED, Why.BROKEN_OFF);
        case SENDER -> ofMail(heard, Why.SENDER_REFUSED);
        case RECIPIENTS -> heard.refusal().map(Verdict::ofRecipient)
                .orElseGet(() -> ofMail(heard, Why.RECIPIENT_REFUSED));
        case DATA -> ofMail(heard, Why.MAIL_REFUSED);
        case END -> end(heard);
        };
    }

    private static Why unreached(MessagingException failure) {
        return failure instanceof MailConnectException || failure.getCause() instanceof UnknownHostException
                ? Why.NOT_REACHED
                : Why.BROKEN_OFF;
    }

    private static Submission end(Heard heard) {
        return switch (heard.code() / 100) {
        case 2 -> new Submission.Taken(heard.answer());
        case 4, 5 -> ofMail(heard, Why.MAIL_REFUSED);
        default -> new Submission.Unknown(Why.ANSWER_LOST);
        };
    }

    private static Submission ofRecipient(Heard.Refusal refusal) {
        return refusal.code() / 100 == 5
                ? new Submission.Refused(Why.RECIPIENT_REFUSED, refusal.answer(), Optional.of(refusal.address()))
                : new Submission.PutOff(Why.LATER, refusal.answer());
    }

    private static Submission ofMail(Heard heard, Why no) {
        return heard.code() / 100 == 5
                ? new Submission.Refused(no, heard.answer(), Optional.empty())
                : putOff(heard, Why.BROKEN_OFF);
    }

    private static Submission ofServer(Heard heard, Why no, Why silent) {
        return heard.code() / 100 == 5 ? new Submission.Unusable(no, heard.answer()) : putOff(heard, silent);
    }

    private static Submission putOff(Heard heard, Why silent) {
        boolean isAsked = heard.code() / 100 == 3;
        boolean isLater = heard.code() / 100 == 4;
        boolean isSilent = isAsked || (heard.code() == 0 && heard.answer().isEmpty());
        return new Submission.PutOff(isLater ? Why.LATER : isSilent ? silent : Why.STRANGE_ANSWER,
                isAsked ? "" : heard.answer());
    }

    /** It was greeted, and what is needed did not stand in its list of what it offers, or it closed the line. */
    private static Submission offered(MessagingException failure) {
        return failure instanceof AuthenticationFailedException
                ? new Submission.Unusable(Why.NO_LOGIN_OFFERED, "")
                : new Submission.Unusable(Why.NO_STARTTLS, "");
    }

    /** Encryption that failed, but not because the line did. */
    private static Optional<Submission> encrypted(MessagingException failure) {
        List<Throwable> causes = Stream.<Throwable>iterate(failure, cause -> cause != null, Throwable::getCause)
                .toList();
        boolean isLine = causes.stream()
                .anyMatch(cause -> LINE_FAILED.stream().anyMatch(type -> type.isInstance(cause)));
        if (isLine || causes.stream().noneMatch(SSLException.class::isInstance)) {
            return Optional.empty();
        }
        boolean isTrust = causes.stream().anyMatch(CertificateException.class::isInstance);
        return Optional.of(new Submission.Unusable(isTrust ? Why.NOT_TRUSTED : Why.NO_ENCRYPTION, ""));
    }
}
