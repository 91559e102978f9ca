package wainbook.setup;

import jakarta.enterprise.context.control.ActivateRequestContext;
import jakarta.inject.Inject;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import wainbook.ledger.Rebuild;
import wainbook.page.Words;

/** Makes all tables that are read from again out of the ledger. */
@Command(name = "rebuild", mixinStandardHelpOptions = true)
public class RebuildCommand implements Callable<Integer> {

    @Inject
    Rebuild rebuild;

    @Spec
    CommandSpec spec;

    @Override
    @ActivateRequestContext
    public Integer call() {
        spec.commandLine().getOut().println(Words.of("ledger.rebuilt", rebuild.everything()));
        return 0;
    }
}
