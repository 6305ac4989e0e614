package icequill.cli;

import icequill.cli.CommandsTest.Run;
import icequill.oracle.ForecastOracle;
import icequill.oracle.Requests;
import java.nio.file.Files;
import java.nio.file.Path;

/** All generated requests through the command line; src/docs/forecast-oracle.md says how to start it, and holds its results. */
public final class OracleRuns {

    private OracleRuns() {
    }

    /** How many requests, such as 200, and the number of the first. */
    public static void main(String[] args) throws Exception {
        int requests = Integer.parseInt(args[0]);
        int first = args.length > 1 ? Integer.parseInt(args[1]) : 0;
        Path shop = Files.createTempDirectory("icequill-oracle").resolve("shop");
        Run.of("new", shop.toString(), "--demo");
        int compared = 0;
        int refused = 0;
        int disagreements = 0;
        for (int number = first; number < first + requests; number++) {
            Run run = Run.of("compare", new Requests(shop).write(number).toString(), "--json");
            if (run.status() != 0) {
                refused++;
                System.out.println(number + " refused: " + run.out() + run.err());
                continue;
            }
            ForecastOracle.Verdict verdict = ForecastOracle.judge(run.json());
            System.out.println(number + ": " + verdict.compared() + " figures");
            compared += verdict.compared();
            disagreements += verdict.disagreements().size();
            for (String disagreement : verdict.disagreements()) {
                System.out.println(number + " " + disagreement);
            }
        }
        System.out.println(requests + " requests, " + refused + " refused, " + compared + " figures, " + disagreements
                + " disagreements");
    }
}
