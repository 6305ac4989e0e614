package icequill.ledger;

import icequill.files.pricing.RatesVersion;
import icequill.ledger.entries.AccountEntry;
import icequill.ledger.entries.AgreementEntry;
import icequill.ledger.entries.CustomerEntry;
import icequill.ledger.entries.MachineEntry;
import icequill.ledger.entries.PaymentEntry;
import icequill.ledger.entries.Register;
import icequill.ledger.entries.RequestEntry;
import icequill.ledger.entries.SiteEntry;
import icequill.ledger.entries.VisitEntry;
import icequill.ledger.papers.Adoption;
import icequill.ledger.papers.Origin;
import icequill.ledger.papers.PaperFiles;
import icequill.ledger.papers.PaperKind;
import icequill.ledger.papers.Series;
import icequill.ledger.store.BookPlace;
import icequill.money.Amounts;
import icequill.problem.Validated;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.money.Monetary;
import javax.money.MonetaryAmount;

/** What a process does over and over in a book until it is killed, and how to see that all it told of is there. */
enum KilledWork {

    /** Two papers in one transaction. */
    CREDIT {
        @Override
        String once(Book book, BookPlace place, String name, int seed) {
            String invoice = Books.issue(book, seed).orElseThrow().number();
            return book.write(open -> open.issue(CREDITS, Origin.NONE.correcting(invoice),
                    numbered -> Validated.valid(Books.printed(numbered, seed)))
                    .then(credit -> open.issue(Books.INVOICES, Origin.NONE.replacing(invoice),
                            numbered -> Validated.valid(Books.printed(numbered, seed)))
                            .map(again -> credit.number() + " " + again.number())))
                    .orElseThrow();
        }

        // Each credit note has its invoice issued anew; both or neither are there.
        @Override
        boolean isWell(Book book, BookPlace place, List<String> told) {
            long credits = numbers(CREDITS).takeWhile(number -> isThere(book, number)).count();
            long replaced = numbers(Books.INVOICES).takeWhile(number -> isThere(book, number))
                    .filter(number -> book.read(open -> open.papers().show(number)).orElseThrow().origin().replaces()
                            .isPresent())
                    .count();
            return credits == replaced && told.stream().flatMap(pair -> Stream.of(pair.split(" ", -1)))
                    .allMatch(number -> isThere(book, number));
        }
    },
    BACKUP {
        @Override
        String once(Book book, BookPlace place, String name, int seed) {
            Path file = folder(place).resolve(name + ENDING);
            book.backup(file, Books.READER, Optional.empty(), Books.UNHEARD).orElseThrow();
            return file.toString();
        }

        // The last that was told of is whole, and so is each that is in its place and was not told of.
        @Override
        boolean isWell(Book book, BookPlace place, List<String> told) throws IOException {
            List<String> there = files(place).stream().map(Path::toString).toList();
            boolean areWhole = there.stream().filter(file -> file.endsWith(ENDING))
                    .filter(file -> !told.contains(file) || file.equals(told.getLast()))
                    .allMatch(file -> Book.verify(Path.of(file), Books.READER, Books.UNHEARD).orElseThrow().findings()
                            .isEmpty());
            for (String file : there) {
                if (!told.contains(file)) {
                    Files.delete(Path.of(file));
                }
            }
            return areWhole && there.containsAll(told);
        }

        @Override
        int unfinished(BookPlace place) throws IOException {
            return (int) files(place).stream().filter(file -> !file.toString().endsWith(ENDING)).count();
        }

        private List<Path> files(BookPlace place) throws IOException {
            if (!Files.isDirectory(folder(place))) {
                return List.of();
            }
            try (Stream<Path> files = Files.list(folder(place))) {
                return files.toList();
            }
        }

        private Path folder(BookPlace place) {
            return place.papers().resolveSibling("backups");
        }
    },
    IMPORT {
        @Override
        String once(Book book, BookPlace place, String name, int seed) {
            book.write(open -> {
                IntStream.range(0, IMPORTED).forEach(i -> all(open.register(), name + "-" + i).orElseThrow());
                return Validated.valid(true);
            }).orElseThrow();
            return name;
        }

        // One of each kind that forms tell of, as an import stores them.
        private Validated<?> all(Register register, String id) {
            VisitEntry visit = Entered.visit();
            return register.add(customer(id)).then(done -> register.add(site(id)))
                    .then(done -> register.add(new MachineEntry(id, "flaker", "Flake ice machine", Optional.empty(),
                            Optional.empty(), 0, "{}")))
                    .then(done -> register.record(new VisitEntry(id, id, visit.began(), visit.ended(),
                            visit.purchaseOrder(), false, visit.data())))
                    .then(done -> register.record(new VisitEntry(id + "-to-come", id, visit.began(), visit.ended(),
                            visit.purchaseOrder(), true, visit.data())))
                    .then(done -> register.add(new AgreementEntry(id, id, id, "{}")))
                    .then(done -> register.add(new RequestEntry("maintenance-request", id, id, "{}")));
        }

        // As many of each, in whole imports.
        @Override
        boolean isWell(Book book, BookPlace place, List<String> told) {
            List<Integer> counts = Books.read(book, open -> List.of(open.entries().customers().size(),
                    open.entries().sites().size(), open.entries().machines().size(), open.entries().visits().size(),
                    open.entries().plannedVisits().size(), open.entries().agreements().size(),
                    open.entries().requests().size()));
            return counts.stream().distinct().count() == 1 && counts.getFirst() % IMPORTED == 0
                    && counts.getFirst() >= told.size() * IMPORTED;
        }
    },
    ADOPT {
        @Override
        String once(Book book, BookPlace place, String name, int seed) {
            return book.write(open -> Validated.valid(open.adopt(version(name)))).orElseThrow().version();
        }

        private RatesVersion version(String name) {
            return RatesVersion.of(Map.of("shop.yaml", text(name), "pricing/labor.yaml", text(name.repeat(200)),
                    "logo.png", new byte[]{0, -1}));
        }

        private byte[] text(String text) {
            return text.getBytes(StandardCharsets.UTF_8);
        }

        // Each that came into force has all of its files, and what was told of did.
        @Override
        boolean isWell(Book book, BookPlace place, List<String> told) {
            List<String> adopted = Books.read(book,
                    open -> open.rates().adoptions().stream().map(Adoption::version).toList());
            boolean areWhole = adopted.stream().allMatch(id -> Books.read(book,
                    open -> open.rates().version(id).map(RatesVersion::id).stream().toList()).equals(List.of(id)));
            return areWhole && adopted.containsAll(told);
        }
    },
    /** A payment with two shares, then what is left of it for a third bill. */
    PAY {
        @Override
        String once(Book book, BookPlace place, String name, int seed) {
            book.write(open -> open.entries().customer(PAYER).found().isPresent()
                    ? Validated.valid(true)
                    : open.register().add(customer(PAYER))
                            .then(added -> open.receiving().note(new AccountEntry(PAYER, "{\"invoices\":[{\"number\":"
                                    + "\"A\"},{\"number\":\"B\"},{\"number\":\"C\"}]}")))
                            .map(noted -> true))
                    .orElseThrow();
            LocalDate day = LocalDate.of(2026, 5, 14);
            PaymentEntry payment = book.write(open -> open.receiving().record(new PaymentEntry(name, PAYER, day,
                    usd(600), "CHECK", false, Optional.of("check " + seed), List.of(
                            new PaymentEntry.Share("A", day, usd(100)), new PaymentEntry.Share("B", day, usd(200))))))
                    .orElseThrow();
            book.write(open -> Validated.valid(open.receiving().allot(payment,
                    List.of(new PaymentEntry.Share("C", day, usd(300)))))).orElseThrow();
            return name;
        }

        @Override
        boolean isWell(Book book, BookPlace place, List<String> told) {
            List<PaymentEntry> all = Books.read(book, open -> open.accounts().payments());
            return all.stream().allMatch(payment -> payment.shares().size() == 2 || payment.shares().size() == 3)
                    && all.stream().filter(payment -> payment.shares().size() == 3).map(PaymentEntry::id).toList()
                            .containsAll(told);
        }

        private MonetaryAmount usd(int number) {
            return Amounts.of(BigDecimal.valueOf(number), Monetary.getCurrency("USD"));
        }
    },
    FORGET {
        @Override
        String once(Book book, BookPlace place, String name, int seed) {
            VisitEntry visit = Entered.visit();
            book.write(open -> {
                Register register = open.register();
                return register.add(customer(name))
                        .then(done -> register.add(site(name)))
                        .then(done -> register.record(new VisitEntry(name, name, visit.began(), visit.ended(),
                                visit.purchaseOrder(), false, visit.data())))
                        .then(done -> register.withdraw(name, "Mrs. Baker says no"));
            }).orElseThrow();
            book.write(open -> open.erasure().forget(name, LocalDate.of(2026, 5, 14))).orElseThrow();
            return name;
        }

        @Override
        boolean isWell(Book book, BookPlace place, List<String> told) {
            return Books.read(book, open -> open.entries().customers()).stream()
                    .allMatch(customer -> isAllOrNothing(book, customer))
                    && told.stream().allMatch(id -> book.read(open -> open.entries().customer(id)).orElseThrow()
                            .forgotten().isPresent());
        }

        // Customer, site, visit and the reason of its withdrawal are forgotten together.
        private boolean isAllOrNothing(Book book, CustomerEntry customer) {
            String id = customer.id();
            Stream<String> personal = book.read(open -> Validated.valid(Stream.of(customer.customer().name(),
                    open.entries().site(id).orElseThrow().name(), open.entries().visit(id).orElseThrow().data(),
                    open.entries().withdrawal(id).orElseThrow().reason()))).orElseThrow();
            return personal.allMatch(text -> text.isEmpty() == customer.forgotten().isPresent());
        }
    };

    private static final Series CREDITS = new Series(PaperKind.CREDIT_NOTE, PaperKind.CREDIT_NOTE.usualLetters(), "",
            2026);
    private static final String ENDING = ".backup";
    private static final int IMPORTED = 10;
    private static final String PAYER = "payer";

    /**
     * Does it once, and returns what may be told of it.
     *
     * @param name another one each time
     */
    abstract String once(Book book, BookPlace place, String name, int seed);

    abstract boolean isWell(Book book, BookPlace place, List<String> told) throws IOException;

    /** How many files a killed process had not put into their places yet. */
    int unfinished(BookPlace place) throws IOException {
        return new PaperFiles(place.papers()).unfinished().size();
    }

    private static CustomerEntry customer(String id) {
        return CustomerEntry.of(id, Entered.group().customer());
    }

    private static SiteEntry site(String id) {
        SiteEntry site = Entered.site();
        return new SiteEntry(id, id, site.name(), site.storeNumber(), site.address(), site.taxPlace(), site.data());
    }

    private static Stream<String> numbers(Series series) {
        return IntStream.iterate(1, i -> i + 1).mapToObj(series::number);
    }

    private static boolean isThere(Book book, String number) {
        return book.read(open -> open.papers().show(number)).problems().isEmpty();
    }
}
