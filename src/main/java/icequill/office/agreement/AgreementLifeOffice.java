package icequill.office.agreement;

import icequill.answer.agreement.AgreementAnswer.OfSite;
import icequill.answer.agreement.AgreementList;
import icequill.answer.agreement.AgreementSheet;
import icequill.answer.agreement.ChangingSheet;
import icequill.answer.agreement.EndingSheet;
import icequill.answer.agreement.TransferSheet;
import icequill.answer.register.RenewalList;
import icequill.answer.register.RenewalList.Todo;
import icequill.ledger.Transaction;
import icequill.life.agreement.AgreementEvent;
import icequill.life.agreement.AgreementState;
import icequill.office.RenewalOffice;
import icequill.office.billing.PendingWrite;
import icequill.office.care.HistoryOffice;
import icequill.party.Language;
import icequill.problem.Place;
import icequill.problem.Validated;
import icequill.render.words.Sentences;
import icequill.shop.BookForms;
import icequill.shop.ShopBook;
import icequill.shop.ShopDay;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** The office that sees agreements through their lives: how they stand, and how they end. */
public final class AgreementLifeOffice {

    private static final Place DAY = new Place("", 0, "day");

    private final ShopBook book;
    private final Optional<Language> language;
    private final LocalDate today;

    private AgreementLifeOffice(ShopBook book, Optional<Language> language) {
        this.book = book;
        this.language = language;
        this.today = ShopDay.today(book.folder(), book.clock());
    }

    /**
     * That of a shop.
     *
     * @param language of the reader; empty for the shop's
     */
    public static AgreementLifeOffice of(Path folder, Clock clock, Optional<Language> language) {
        return of(ShopBook.of(folder, clock), language);
    }

    /** The same of a shop that is open already. */
    public static AgreementLifeOffice of(ShopBook book, Optional<Language> language) {
        return new AgreementLifeOffice(book, language);
    }

    /**
     * How an agreement stands.
     *
     * @param name its id or number
     */
    public Validated<AgreementSheet> show(String name) {
        return sentences().then(sentences -> HeldAgreement.of(book, name, today)
                .then(held -> told(book, held, sentences)));
    }

    /**
     * Agreements as they stand, by number.
     *
     * @param text which words they have somewhere; all for no letters
     * @param all whether those that are over are listed too
     */
    public Validated<AgreementList> list(String text, boolean all) {
        return sentences().then(sentences -> book.looking(held -> {
            Map<String, Todo> renewals = RenewalOffice.of(held, language).upcoming(today, LocalDate.MAX).found()
                    .stream()
                    .flatMap(list -> list.renewals().stream())
                    .collect(Collectors.toMap(RenewalList.Row::agreement, RenewalList.Row::next));
            return held.read(open -> Validated
                    .valid(new AgreementListing(held, sentences, today, renewals).of(open).with(text, all)));
        }));
    }

    /** Ends one by notice, or tries what that comes to: nothing is stored then. */
    public Validated<EndingSheet> end(String name, NoticeWish wish) {
        return pending(name, wish.received(), wish.seen(), wish.isTrial(),
                (within, open, sentences, held) -> new EarlyEnding(within, open, today, sentences).of(held, wish)
                        .map(ending -> new EndingSheet(ending, sentences)));
    }

    /** Sites of its customer that may come into it, with their machines, by id. */
    public Validated<List<OfSite>> comingSites(String name) {
        return HeldAgreement.of(book, name, today)
                .then(held -> book.read(open -> Validated.valid(new CustomerSites(held, open).shown())));
    }

    /** Changes what it looks after in mid-term, or tries what that comes to: nothing is stored then. */
    public Validated<ChangingSheet> change(String name, ChangeWish wish) {
        return pending(name, wish.day(), wish.seen(), wish.isTrial(),
                (within, open, sentences, held) -> new MidTermChange(within, open, today, sentences).of(held, wish)
                        .map(change -> new ChangingSheet(change, sentences)));
    }

    /** Gives the rest of it to a new owner, or tries what that comes to: nothing is stored then. */
    public Validated<TransferSheet> transfer(String name, TransferWish wish) {
        return ShopDay.notAhead(wish.from(), today, new Place("", 0, "from")).then(from -> pending(name, from,
                wish.seen(), wish.isTrial(),
                (within, open, sentences, held) -> new OwnerChange(within, open, today, sentences).of(held, wish)
                        .map(transfer -> new TransferSheet(transfer, sentences))));
    }

    /** What is done with an agreement in one transaction, by a book all of whose work is that of it. */
    private interface Work<T> {
        Validated<T> of(ShopBook within, Transaction open, Sentences sentences, HeldAgreement held);
    }

    private <T> Validated<T> pending(String name, LocalDate day, Optional<Integer> seen, boolean isTrial,
            Work<T> work) {
        return ShopDay.notAhead(day, today, DAY).then(known -> sentences()).then(sentences -> {
            PendingWrite<T> pending = new PendingWrite<>(book, open -> {
                ShopBook within = book.within(open);
                return HeldAgreement.of(within, name, today).then(held -> held.accepted(seen))
                        .then(held -> work.of(within, open, sentences, held));
            });
            return isTrial ? pending.tried() : pending.done();
        });
    }

    /** Renews one, which tells what it goes on as. */
    public Validated<AgreementSheet> renew(String name, RenewalWish wish) {
        return ShopDay.notAhead(wish.day(), today, DAY).then(day -> sentences())
                .then(sentences -> book.write(open -> {
                    ShopBook within = book.within(open);
                    return HeldAgreement.of(within, name, today).then(held -> held.accepted(wish.seen()))
                            .then(held -> new GoingOnAgain(within, open).of(held, wish))
                            .then(next -> HeldAgreement.of(within, next, today))
                            .then(held -> told(within, held, sentences));
                }));
    }

    /**
     * Notes that a notice of its renewal was sent, that the last one arrived, or that the customer does not want it to go on after its term.
     *
     * @param seen how many of its steps were known to whoever asks; empty where that does not matter
     */
    public Validated<AgreementSheet> note(String name, AgreementEvent event, Optional<Integer> seen) {
        return ShopDay.notAhead(event.day(), today, DAY).then(day -> sentences())
                .then(sentences -> book.write(open -> {
                    ShopBook within = book.within(open);
                    return HeldAgreement.of(within, name, today).then(held -> held.accepted(seen))
                            .then(held -> AgreementState.step(held.steps().state(), event, held.terms())
                                    .then(after -> {
                                        open.lifeSteps().add(held.steps().next(event, held.entry().site()));
                                        return HeldAgreement.of(within, name, today);
                                    }))
                            .then(held -> told(within, held, sentences));
                }));
    }

    private Validated<AgreementSheet> told(ShopBook from, HeldAgreement held, Sentences sentences) {
        return from.read(open -> Validated.valid(new AgreementTelling(held, open, sentences, today).sheet()));
    }

    private Validated<Sentences> sentences() {
        return HistoryOffice.sentences(BookForms.shop(book), language);
    }
}
