package icequill.oracle;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/** Requests for comparisons in a demo shop, each with other guesses, other dirt and other calls. Seeds are fixed. */
public record Requests(Path shop) {

    private static final List<String> QUOTES = List.of("crumb-lane-plan", "plan-mercado", "fernhill-plan");

    /** Writes a request and the rates it goes by; gives its file. */
    public Path write(int number) throws IOException {
        Random random = new Random(77_000L + number);
        Path rates = shop.resolve("pricing/forecast.yaml");
        Path original = shop.resolve("forecast-original.txt");
        if (!Files.exists(original)) {
            Files.copy(rates, original);
        }
        String text = Files.readString(original)
                .replaceFirst("randomFaults: [^\n]*", guess(random))
                .replaceFirst("usual: \\{by6: 2, by12: 9\\}[^\n]*\n[^\n]*\n[^\n]*", stops(random))
                .replaceFirst("usual: \\{by6: 2, by12: 8\\}[^\n]*\n[^\n]*\n[^\n]*", stops(random))
                .replaceFirst("minutes: 30 ", "minutes: " + (15 + random.nextInt(60)) + " ")
                .replaceFirst("restores: \\{cleaning: 100, brushing: 100\\}", random.nextInt(3) == 0
                        ? "restores: {cleaning: " + (40 + random.nextInt(60)) + ", brushing: "
                                + (40 + random.nextInt(60)) + "}"
                        : "restores: {cleaning: 100, brushing: 100}")
                // What the machines of a site share is not in the oracle.
                .replaceFirst("sitesDiffer: [^\n]*", "sitesDiffer: {usual: 0, low: 0, high: 0}")
                .replaceFirst("afterCall: resets", random.nextInt(4) == 0 ? "afterCall: restarts" : "afterCall: resets")
                .replaceFirst("unknownMonths: 12", "unknownMonths: " + random.nextInt(30));
        Files.writeString(rates, text);
        String quote = Files
                .readString(shop.resolve("quotes").resolve(QUOTES.get(random.nextInt(QUOTES.size())) + ".yaml"));
        Path request = shop.resolve("quotes/generated.yaml");
        Files.writeString(request, quote
                .replaceFirst("machines: \\[lobby-bar, floor-3, floor-6, pool-bar\\]",
                        "machines: [lobby-bar, pool-bar]")
                .replaceFirst("2024-11-04", "202" + random.nextInt(6) + "-0" + (1 + random.nextInt(9))
                        + "-1" + random.nextInt(10)));
        return request;
    }

    private static String guess(Random random) {
        double usual = 0.05 + 0.9 * random.nextDouble();
        return String.format(Locale.ROOT, "randomFaults: {usual: %.3f, low: 0.01, high: 2}", usual);
    }

    /** Of twenty; by month 12 so many that dirt never gets safer with time. */
    private static String stops(Random random) {
        double six = 0.3 + 3.2 * random.nextDouble();
        double least = 20 - (20 - six) * (20 - six) / 20;
        double twelve = least + 0.3 + (17 - least) * 0.8 * random.nextDouble();
        return String.format(Locale.ROOT,
                "usual: {by6: %.2f, by12: %.2f}\n  low: {by6: 0.1, by12: 0.3}\n  high: {by6: 18, by12: 19.9}",
                six, twelve);
    }
}
