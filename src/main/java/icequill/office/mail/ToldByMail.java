package icequill.office.mail;

import icequill.agreement.NoticeRule.Delivery;
import icequill.agreement.SentNotice;
import icequill.ledger.Transaction;
import icequill.life.agreement.AgreementEvent;
import icequill.life.agreement.AgreementEvent.CameBack;
import icequill.life.agreement.AgreementEvent.Told;
import icequill.life.agreement.AgreementState;
import icequill.life.mail.MailEvent;
import icequill.life.mail.MailMatter.Loose;
import icequill.life.mail.MailState;
import icequill.life.mail.MailTells;
import icequill.life.telling.Telling;
import icequill.shop.BookForms;
import icequill.shop.life.MailLife;
import icequill.shop.life.VisitTellings;
import icequill.shop.steps.AgreementSteps;
import java.time.LocalDate;
import java.util.Optional;

/**
 * What follows for agreements and visits from mails by which their customers are told of them: they know once it went out, and do not once
 * it came back.
 *
 * @param today the day on which that happens
 */
record ToldByMail(Transaction open, LocalDate today) {

    /** @param mail as it was before something happened to it */
    void after(MailLife mail, MailEvent event) {
        if (mail.matter() instanceof Loose loose && loose.tells().isPresent()) {
            MailTells tells = loose.tells().get();
            if (event instanceof MailEvent.Acceptance
                    || (event instanceof MailEvent.Finding found && found.wentOut())) {
                told(mail, tells);
            } else if (event instanceof MailEvent.Bounce && mail.state() instanceof MailState.Sent) {
                cameBack(mail, tells);
            }
        }
    }

    private void told(MailLife mail, MailTells tells) {
        switch (tells) {
        case MailTells.OfRenewal(String agreement) -> note(agreement, mail, new Told(new SentNotice(today,
                Delivery.EMAIL, Optional.of(mail.matter().name()), Optional.of(mail.id()), Optional.empty(),
                Optional.empty())));
        case MailTells.OfVisit visit -> open.lifeSteps().add(VisitTellings.next(open, visit.visit(), mail.site(),
                new Telling(today, Telling.Way.MAIL, visit.begins(), visit.ends(), Optional.of(mail.id()), false)));
        }
    }

    private void cameBack(MailLife mail, MailTells tells) {
        switch (tells) {
        case MailTells.OfRenewal(String agreement) -> note(agreement, mail, new CameBack(today, mail.id()));
        case MailTells.OfVisit visit -> open.lifeSteps()
                .add(VisitTellings.cameBack(open, visit.visit(), mail.site(), mail.id(), today));
        }
    }

    /** Unless it was ended or renewed since, where no notice matters any more. */
    private void note(String agreement, MailLife mail, AgreementEvent event) {
        AgreementSteps steps = BookForms.steps(open, agreement);
        if (AgreementState.told(steps.state(), event).found().isPresent()) {
            open.lifeSteps().add(steps.next(event, mail.site().orElseThrow()));
        }
    }
}
