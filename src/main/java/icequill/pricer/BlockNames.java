package icequill.pricer;

import icequill.problem.Code;
import icequill.rates.Rates;
import icequill.work.Band;
import icequill.work.Block;
import icequill.work.Visit;
import icequill.work.Visit.Named;
import icequill.work.VisitLine;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;

/** What is wrong with what a visit or sale sells ahead. */
record BlockNames(Visit visit, Rates rates, KnownNames names) {

    void check() {
        List<VisitLine.Own> lines = visit.lines().stream()
                .flatMap(line -> line instanceof VisitLine.Own own
                        ? Stream.of(own)
                        : Stream.empty())
                .filter(own -> own.block().isPresent()).toList();
        lines.forEach(line -> check(line.block().orElseThrow()));
        lines.stream().skip(1).forEach(further -> names.problems().add(Code.NOT_ALLOWED, further.place(),
                "a second block is sold by the same form", "a form for each"));
    }

    private void check(Block block) {
        new TreeSet<>(block.factors().keySet()).forEach(band -> names.find(new Named(band, block.place()), "labor band",
                rates.labor().bands(), Band::id));
        block.until().filter(day -> day.isBefore(visit.day()))
                .ifPresent(day -> names.problems().add(Code.WRONG_ORDER, block.place(),
                        "to be used by " + day + ", but sold on " + visit.day(), "a later day"));
    }
}
