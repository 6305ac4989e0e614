package icequill.render.view;

import icequill.document.Paper;
import icequill.document.PricedPaper;
import icequill.explain.ConstantKey;
import icequill.party.Address;
import icequill.party.BillTo;
import icequill.party.Shop;
import icequill.render.words.Fonts;
import icequill.render.words.Sentences;
import icequill.render.words.Words;
import icequill.tax.TaxPlace;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** What every paper begins with, as texts for {@code parts/letter.ftlh}. */
record LetterView(Paper paper, Title title, Sentences sentences) {

    LetterView(Paper paper, String kind, Sentences sentences) {
        this(paper, Title.of(kind), sentences);
    }

    /** @param facts the references beside the address */
    Map<String, Object> model(BillTo addressee, List<Map<String, String>> facts) {
        return model(billTo(addressee), facts);
    }

    /** Whether the VAT identifiers of both sides belong on the paper (2006/112/EC Art. 226(3) and (4)). */
    private boolean namesVat() {
        return paper instanceof PricedPaper priced && priced.totals().taxPlace().regime() == TaxPlace.Regime.VAT;
    }

    private Stream<String> vatNumber(Optional<String> id) {
        return id.filter(number -> namesVat()).map(number -> sentences.word("vat-number", number)).stream();
    }

    /** For papers that go to a site: whose it is, and where. */
    Map<String, Object> model(String customer, String site, Address address, List<Map<String, String>> facts) {
        List<String> lines = new ArrayList<>();
        if (!site.equals(customer)) {
            lines.add(site);
        }
        lines.addAll(address.lines());
        Map<String, Object> model = model(Map.of("name", customer, "lines", lines), facts);
        model.put("draft", false);
        return model;
    }

    private Map<String, Object> model(Map<String, Object> addressee, List<Map<String, String>> facts) {
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("lang", paper.language().tag());
        model.put("size", ConstantKey.of(paper.size()));
        model.put("accent", paper.shop().accent());
        model.put("w", Words.of(paper.language()).all());
        model.put("title", title.text());
        model.put("kind", title.kind());
        model.put("number", title.number().orElse(""));
        model.put("footFont", Fonts.familyFor(title.text() + paper.shop().name()).style());
        model.put("shop", shop(paper.shop()));
        model.put("billTo", addressee);
        model.put("facts", facts);
        return model;
    }

    private Map<String, Object> shop(Shop shop) {
        return Map.of("name", shop.name(), "lines", shop.address().lines(), "phone", shop.phone(), "email",
                shop.email(), "registrations",
                Stream.concat(vatNumber(shop.vatId()),
                        shop.registrations().stream().map(entry -> entry.name() + " " + entry.value())).toList(),
                "payee",
                shop.remittance().payee(), "payeeLines", shop.remittance().address().lines(), "bank",
                shop.remittance().bank().stream().map(entry -> Details.pair(entry.name(), entry.value())).toList());
    }

    private Map<String, Object> billTo(BillTo billTo) {
        List<String> lines = new ArrayList<>();
        billTo.attention().ifPresent(lines::add);
        lines.addAll(billTo.address().lines());
        vatNumber(billTo.vatId()).forEach(lines::add);
        return Map.of("name", billTo.name(), "lines", lines);
    }
}
