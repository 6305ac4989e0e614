package icequill.mail;

/** What a mail server sends back of a mail that it could not deliver (RFC 3464). */
public final class DeliveryReport {

    private DeliveryReport() {
    }

    /**
     * A report of a mail to the bakery's accounts.
     *
     * @param message its id
     */
    public static String of(String message) {
        return """
                From: mailer-daemon@post.example
                Subject: Undelivered
                MIME-Version: 1.0
                Content-Type: multipart/report; report-type=delivery-status; boundary="report"

                --report
                Content-Type: text/plain

                It could not be delivered.
                --report
                Content-Type: message/delivery-status

                Reporting-MTA: dns; post.example

                Final-Recipient: rfc822; accounts@crumblane.example
                Action: failed
                Status: 5.1.1
                Diagnostic-Code: smtp; 550 5.1.1 no such person

                --report
                Content-Type: text/rfc822-headers

                Message-ID: <%s>

                --report--
                """.formatted(message).replace("\n", "\r\n");
    }
}
