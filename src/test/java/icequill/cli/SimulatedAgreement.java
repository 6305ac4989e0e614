package icequill.cli;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** An agreement of the simulated year, worked out by hand as its events come: payments in whole cents, days counted on a calendar. */
final class SimulatedAgreement {

    static final int TERM = 12;
    /** Of the demo's county, 4 + 4.5 + 0.375 %. */
    private static final BigDecimal TAX = new BigDecimal("0.08875");
    private static final int HALF_YEAR = 6;
    private static final int STEP = 500;

    /** List prices of a visit: the way 52.00, each machine 122.75 flat, and with a filter 87.25 each half year. */
    private static final long WAY = 5200;
    private static final long MACHINE = 12_275;
    private static final long FILTER = 8725;

    private final SimulatedSite site;
    private final String number;
    private final LocalDate start;
    private final List<Payment> payments = new ArrayList<>();
    private final List<Part> parts = new ArrayList<>();
    private final List<LocalDate> kept = new ArrayList<>();
    private boolean hasSpare;
    private long yearPrice;
    private @Nullable LocalDate lastDay;
    private boolean isOver;

    /** One of its payments, before tax, and what was given back of it. */
    static final class Payment {
        private final int number;
        private final LocalDate due;
        private long cents;
        private long back;
        private @Nullable String invoice;

        private Payment(int number, LocalDate due, long cents) {
            this.number = number;
            this.due = due;
            this.cents = cents;
        }

        boolean isBilled() {
            return invoice != null;
        }

        void bill(String paper) {
            invoice = paper;
        }

        long left() {
            return cents - back;
        }

        /** As {@code agreement show} has it. */
        String told() {
            return number + " " + due + " " + money(cents) + " " + money(back) + " " + isBilled();
        }
    }

    private record Part(long cents, LocalDate from) {}

    SimulatedAgreement(SimulatedSite site, String number, LocalDate start, long yearPrice, boolean hasSpare) {
        this.site = site;
        this.number = number;
        this.start = start;
        this.yearPrice = yearPrice;
        this.hasSpare = hasSpare;
        parts.add(new Part(yearPrice, start));
        List<LocalDate> dates = isPaidAhead() ? every(site.months().orElseThrow()) : slots();
        List<Long> weights = dates.stream().map(day -> isPaidAhead() ? 1L : list(day, hasSpare)).toList();
        List<Long> shares = shares(yearPrice, weights);
        IntStream.range(0, dates.size())
                .forEach(i -> payments.add(new Payment(i + 1, dates.get(i), shares.get(i))));
    }

    String number() {
        return number;
    }

    boolean hasSpare() {
        return hasSpare;
    }

    boolean isPaidAhead() {
        return site.months().isPresent();
    }

    List<Payment> payments() {
        return payments;
    }

    /** When its visits are due. */
    List<LocalDate> slots() {
        return every(site.gap());
    }

    LocalDate end() {
        return start.plusMonths(TERM).minusDays(1);
    }

    private List<LocalDate> every(int months) {
        return IntStream.iterate(0, month -> month < TERM, month -> month + months).mapToObj(start::plusMonths)
                .toList();
    }

    private long list(LocalDate day, boolean withSpare) {
        int machines = withSpare ? 2 : 1;
        boolean isFilterDue = ChronoUnit.MONTHS.between(start, day) % HALF_YEAR == 0;
        return WAY + machines * (MACHINE + (isFilterDue ? FILTER : 0));
    }

    /** A year with one machine or two at list, less the plan's discount, to the nearest 5.00. */
    private long planned(boolean withSpare) {
        long sum = slots().stream().mapToLong(day -> list(day, withSpare)).sum();
        return BigDecimal.valueOf(sum * (100 - site.discount())).divide(BigDecimal.valueOf(100L * STEP), 0,
                RoundingMode.HALF_UP).longValueExact() * STEP;
    }

    /** By largest remainder, the first of equal ones first. */
    private static List<Long> shares(long cents, List<Long> weights) {
        long all = weights.stream().mapToLong(weight -> weight).sum();
        List<Long> shares = new ArrayList<>(weights.stream().map(weight -> cents * weight / all).toList());
        long left = cents - shares.stream().mapToLong(share -> share).sum();
        IntStream.range(0, weights.size()).boxed()
                .sorted(Comparator.comparingLong((Integer i) -> cents * weights.get(i) % all).reversed()).limit(left)
                .forEach(i -> shares.set(i, shares.get(i) + 1));
        return shares;
    }

    boolean isInForce(LocalDate day) {
        return !day.isBefore(start) && !day.isAfter(lastDay == null ? end() : lastDay);
    }

    /** Whether nobody ended, refused or renewed it. */
    boolean isRunning() {
        return lastDay == null && !isOver;
    }

    /** It ends with its term, or goes on as another. */
    void over() {
        isOver = true;
    }

    void kept(LocalDate day) {
        kept.add(day);
    }

    List<LocalDate> kept() {
        return kept;
    }

    /** Payments that are to be billed up to a day: those that are due or, paid by the visit, whose visit was made. */
    List<Payment> due(LocalDate until) {
        return payments.stream().filter(payment -> !payment.isBilled() && payment.cents > 0)
                .filter(payment -> !payment.due.isAfter(until))
                .filter(payment -> isPaidAhead() || kept.contains(payment.due)).toList();
    }

    /** What was billed and not given back, before tax. */
    long billed() {
        return payments.stream().filter(Payment::isBilled).mapToLong(Payment::left).sum();
    }

    long yearPrice() {
        return yearPrice;
    }

    /** What the spare machine adds from a day on, or takes away; days are counted with the first and the last. */
    long proration(LocalDate from) {
        long days = ChronoUnit.DAYS.between(start, end()) + 1;
        long left = ChronoUnit.DAYS.between(from, end()) + 1;
        return BigDecimal.valueOf((planned(!hasSpare) - planned(hasSpare)) * left)
                .divide(BigDecimal.valueOf(days), 0, RoundingMode.HALF_UP).longValueExact();
    }

    /** Whether more would go back than the payments to come, of one that is not billed. */
    boolean wouldGiveBackUnbilled(LocalDate from) {
        return givenBack(beyond(from), earlier(from)).stream().anyMatch(part -> !part.of.isBilled());
    }

    private long beyond(LocalDate from) {
        return Math.max(0, -proration(from) - open(from).stream().mapToLong(payment -> payment.cents).sum());
    }

    /** Takes the spare machine in, or out. */
    void change(LocalDate from) {
        long amount = proration(from);
        long beyond = beyond(from);
        List<Payment> open = open(from);
        givenBack(beyond, earlier(from)).forEach(part -> part.of.back += part.cents);
        if (open.isEmpty() && amount > 0) {
            payments.add(new Payment(payments.size() + 1, from, amount));
        } else {
            spread(amount + beyond, open);
        }
        parts.add(new Part(amount, from));
        yearPrice += planned(!hasSpare) - planned(hasSpare);
        hasSpare = !hasSpare;
    }

    private List<Payment> open(LocalDate from) {
        return payments.stream().filter(payment -> !payment.isBilled() && !payment.due.isBefore(from)).toList();
    }

    private List<Payment> earlier(LocalDate from) {
        List<Payment> open = open(from);
        return payments.stream().filter(payment -> !open.contains(payment)).toList();
    }

    /** Evenly, none below nothing. */
    private static void spread(long amount, List<Payment> open) {
        long rest = amount;
        List<Payment> over = open;
        while (!over.isEmpty() && rest != 0) {
            List<Payment> all = over;
            long sign = Long.signum(rest);
            List<Long> even = shares(Math.abs(rest), all.stream().map(payment -> 1L).toList());
            List<Payment> gone = IntStream.range(0, all.size())
                    .filter(i -> all.get(i).cents + sign * even.get(i) < 0).mapToObj(all::get).toList();
            if (gone.isEmpty()) {
                IntStream.range(0, all.size()).forEach(i -> all.get(i).cents += sign * even.get(i));
                return;
            }
            rest += gone.stream().mapToLong(payment -> payment.cents).sum();
            gone.forEach(payment -> payment.cents = 0);
            over = all.stream().filter(payment -> !gone.contains(payment)).toList();
        }
    }

    private record Back(Payment of, long cents) {}

    /** The latest first, of each at most what is left of it. */
    private static List<Back> givenBack(long amount, List<Payment> from) {
        List<Back> all = new ArrayList<>();
        long left = amount;
        for (Payment payment : from.stream().sorted(Comparator.comparingInt((Payment one) -> one.number).reversed())
                .toList()) {
            long part = Math.min(left, payment.left());
            if (part > 0) {
                all.add(new Back(payment, part));
                left -= part;
            }
        }
        return all;
    }

    /**
     * Ends by notice: what was asked for by then less what is earned day by day goes back, first of what is not billed yet.
     *
     * @return what goes back; empty where nothing is paid ahead
     */
    Optional<Long> end(LocalDate last) {
        lastDay = last;
        List<Payment> asked = payments.stream().filter(one -> one.isBilled() || !one.due.isAfter(last)).toList();
        payments.stream().filter(one -> !asked.contains(one)).forEach(one -> one.cents = 0);
        if (!isPaidAhead()) {
            return Optional.empty();
        }
        long back = Math.max(0, BigDecimal.valueOf(asked.stream().mapToLong(Payment::left).sum())
                .subtract(earned(last)).setScale(0, RoundingMode.HALF_UP).longValueExact());
        List<Back> less = givenBack(back, asked.stream().filter(one -> !one.isBilled()).toList());
        long rest = back - less.stream().mapToLong(Back::cents).sum();
        List<Back> credited = givenBack(rest, asked.stream().filter(Payment::isBilled).toList());
        less.forEach(part -> part.of.cents -= part.cents);
        credited.forEach(part -> part.of.back += part.cents);
        return Optional.of(back);
    }

    /** Of each part by the days that are gone of its own, in cents. */
    private BigDecimal earned(LocalDate last) {
        return parts.stream().map(part -> {
            long gone = Math.max(0, ChronoUnit.DAYS.between(part.from, last) + 1);
            long days = ChronoUnit.DAYS.between(part.from, end()) + 1;
            return BigDecimal.valueOf(part.cents * gone).divide(BigDecimal.valueOf(days), 12, RoundingMode.HALF_UP);
        }).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** 3 % more, to the nearest 5.00, which with these prices never is more than the 5 % that the plan allows. */
    long renewed() {
        return BigDecimal.valueOf(yearPrice * 103).divide(BigDecimal.valueOf(100L * STEP), 0, RoundingMode.HALF_UP)
                .longValueExact() * STEP;
    }

    static BigDecimal money(long cents) {
        return BigDecimal.valueOf(cents, 2);
    }

    /** With the tax of a paper of its own. */
    static BigDecimal taxed(long cents) {
        return money(cents).add(money(cents).multiply(TAX).setScale(2, RoundingMode.HALF_UP));
    }
}
