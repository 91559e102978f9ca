package wainbook.pack.page.view;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import wainbook.pack.Trigger;
import wainbook.page.Filled;
import wainbook.page.Option;
import wainbook.page.Words;

/**
 * The form by which a pack is set aside as damaged.
 *
 * @param order the vehicle that it is fitted in, which will be held
 */
public record DamagedView(Filled filled, Optional<String> order) {

    public List<Option> triggers() {
        return Arrays.stream(Trigger.values())
                .map(one -> new Option(one.name(), Words.of("pack.trigger." + one.name())))
                .toList();
    }

    public boolean heating() {
        return filled.value("heating").equals("yes");
    }
}
