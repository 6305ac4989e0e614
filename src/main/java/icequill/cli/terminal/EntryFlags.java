package icequill.cli.terminal;

import icequill.answer.EntryFlag;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.IModelTransformer;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/** Gives a command one option for each value of an entry. */
public abstract class EntryFlags implements IModelTransformer {

    private final List<EntryFlag> flags;

    EntryFlags(List<EntryFlag> flags) {
        this.flags = List.copyOf(flags);
    }

    public static final class OfCustomer extends EntryFlags {
        OfCustomer() {
            super(EntryFlag.CUSTOMER);
        }
    }

    public static final class OfSite extends EntryFlags {
        OfSite() {
            super(EntryFlag.SITE);
        }
    }

    public static final class OfMachine extends EntryFlags {
        OfMachine() {
            super(EntryFlag.MACHINE);
        }
    }

    public static final class OfContact extends EntryFlags {

        OfContact() {
            super(EntryFlag.CONTACT);
        }
    }

    public static final class OfPayment extends EntryFlags {

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
    public static Map<String, String> given(CommandSpec spec, List<EntryFlag> flags) {
        ParseResult line = spec.commandLine().getParseResult();
        Map<String, String> values = new LinkedHashMap<>();
        flags.stream().map(EntryFlag::name).filter(line::hasMatchedOption)
                .forEach(flag -> values.put(flag, line.matchedOptionValue(flag, "")));
        return values;
    }
}
