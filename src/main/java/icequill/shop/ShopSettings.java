package icequill.shop;

import icequill.account.ReminderTerms;
import icequill.agreement.Earning;
import icequill.agreement.UsualTerms;
import icequill.files.form.RemindersReader;
import icequill.files.form.ShopReader;
import icequill.files.pricing.PricingReader;
import icequill.files.pricing.SiteKindsReader;
import icequill.files.yaml.Fields;
import icequill.files.yaml.FolderFiles;
import icequill.files.yaml.Tree;
import icequill.files.yaml.YamlReader;
import icequill.party.Shop;
import icequill.party.SiteKinds;
import icequill.problem.Problem;
import icequill.problem.Problems;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What shop.yaml and pricing/ say.
 *
 * @param agreed what agreements say that were made of quotes, unless something else is said
 * @param pricing empty where there is no shop
 * @param problems all that is wrong with them
 * @param texts all that stand in them
 */
record ShopSettings(Optional<Shop> shop, ReminderTerms reminders, Earning earning, UsualTerms agreed,
        Optional<PricingReader.Pricing> pricing, SiteKinds siteKinds, List<Problem> problems, List<ShopText> texts) {

    static final String SHOP = "shop.yaml";

    ShopSettings {
        problems = List.copyOf(problems);
        texts = List.copyOf(texts);
    }

    /** The same with what else is wrong. */
    ShopSettings with(List<Problem> more) {
        return new ShopSettings(shop, reminders, earning, agreed, pricing, siteKinds,
                Stream.concat(more.stream(), problems.stream()).toList(), texts);
    }

    static ShopSettings read(Path folder) {
        Problems problems = new Problems();
        List<ShopText> texts = new ArrayList<>();
        FolderFiles files = new FolderFiles(folder, problems);
        Optional<Fields> own = tree(files, folder.resolve(SHOP), problems, texts)
                .flatMap(tree -> Fields.checked(tree, "/icequill/schema/shop.schema.json", problems));
        Optional<Shop> shop = own.flatMap(ShopReader::read);
        ReminderTerms reminders = own
                .flatMap(fields -> shop.map(found -> RemindersReader.read(fields, found.currency())))
                .orElse(ReminderTerms.USUAL);
        Earning earning = own.flatMap(fields -> fields.constant("agreementsEarnedBy", Earning.class))
                .orElse(Earning.DAYS);
        List<Fields> rates = files.of("pricing").stream().flatMap(file -> tree(files, file, problems, texts)
                .flatMap(tree -> PricingReader.checked(tree, problems)).stream()).toList();
        SiteKinds siteKinds = SiteKindsReader.read(rates);
        Optional<PricingReader.Pricing> pricing = shop
                .map(found -> new PricingReader(found.currency(), found.paymentDays(), siteKinds, problems)
                        .read(rates));
        return new ShopSettings(shop, reminders, earning, own.map(ShopSettings::agreed).orElse(UsualTerms.THIRTY_DAYS),
                pricing, siteKinds, problems.list(), texts);
    }

    private static UsualTerms agreed(Fields own) {
        UsualTerms usual = UsualTerms.THIRTY_DAYS;
        return new UsualTerms(own.integer("cancelDays").orElse(usual.cancelDays()),
                own.integer("refuseDays").orElse(usual.refuseDays()), own.integer("renewalMonths"));
    }

    private static Optional<Tree> tree(FolderFiles files, Path file, Problems problems, List<ShopText> texts) {
        Optional<Tree> tree = YamlReader.read(file, files.shown(file), problems);
        tree.ifPresent(found -> texts.addAll(ShopText.all(found)));
        return tree;
    }
}
