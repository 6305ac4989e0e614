package icequill.bench;

import icequill.ledger.BookBench;
import icequill.ledger.papers.IssuedPaper;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/** What finding, showing and issuing one paper takes in books of 20,000 customers and 60,000 machines. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(value = 1, jvmArgsAppend = {"-Xmx512m", "--enable-native-access=ALL-UNNAMED",
        "-Djava.util.logging.config.file=src/main/dist/lib/logging.properties"})
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 3, time = 2)
public class BookBenchmark {

    @Param({"SQLITE", "POSTGRESQL"})
    public String database = "";

    @Param({"10000", "100000", "1000000"})
    public int papers;

    private BookBench bench = BookBench.NONE;

    @Setup(Level.Trial)
    public void open() throws Exception {
        bench = BookBench.open(database, papers);
    }

    @TearDown(Level.Trial)
    public void close() throws Exception {
        bench.close();
    }

    @Benchmark
    public List<IssuedPaper> findByOrder() {
        return bench.find(bench.order());
    }

    @Benchmark
    public List<IssuedPaper> findByCommonWords() {
        return bench.find("hotel street");
    }

    /** Each fits one site in eight, and none has both. */
    @Benchmark
    public List<IssuedPaper> findWordsThatNoSiteHasTogether() {
        return bench.find("hotel grill");
    }

    /** One paper in five comes to it. */
    @Benchmark
    public List<IssuedPaper> findByCommonAmountAndName() {
        return bench.find("maple grill 150.00");
    }

    @Benchmark
    public IssuedPaper show() {
        return bench.show();
    }

    /** Without printing; with the PDF and the rows forced to the disk. */
    @Benchmark
    public IssuedPaper issue() {
        return bench.issue();
    }
}
