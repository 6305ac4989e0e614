package icequill.cli.entry;

import icequill.answer.EntryFlag;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.IModelTransformer;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/** Gives a command one option for each value of a customer, site or machine. */
abstract class EntryFlags implements IModelTransformer {

    private final List<EntryFlag> flags;

    EntryFlags(List<EntryFlag> flags) {
        this.flags = List.copyOf(flags);
    }

    static final class OfCustomer extends EntryFlags {
        OfCustomer() {
            super(EntryFlag.CUSTOMER);
        }
    }

    static final class OfSite extends EntryFlags {
        OfSite() {
            super(EntryFlag.SITE);
        }
    }

    static final class OfMachine extends EntryFlags {
        OfMachine() {
            super(EntryFlag.MACHINE);
        }
    }

    static final class OfPayment extends EntryFlags {

        OfPayment() {
            super(EntryFlag.PAYMENT);
        }
    }

    @Override
    public CommandSpec transform(CommandSpec spec) {
        flags.forEach(flag -> spec.addOption(OptionSpec.builder(flag.name()).paramLabel("TEXT").type(String.class)
                .description(flag.about()).build()));
        return spec;
    }

    /** What was given on the command line, by flag. */
    static Map<String, String> given(CommandSpec spec, List<EntryFlag> flags) {
        ParseResult line = spec.commandLine().getParseResult();
        Map<String, String> values = new LinkedHashMap<>();
        flags.stream().map(EntryFlag::name).filter(line::hasMatchedOption)
                .forEach(flag -> values.put(flag, line.matchedOptionValue(flag, "")));
        return values;
    }
}
