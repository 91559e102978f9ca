package wainbook.quality.containment.page.view;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import wainbook.page.Filled;
import wainbook.page.Option;
import wainbook.page.Words;
import wainbook.quality.QualitySaying.Disposition;
import wainbook.quality.QualitySaying.Word;
import wainbook.quality.containment.Containment;

/** One vehicle of a containment, with the form that settles its readings. */
public record DecisionView(
        Containment containment, VehicleView vehicle, Filled filled, Set<String> ticked, boolean mayDecide) {

    public String path() {
        return vehicle.path();
    }

    public String code() {
        return containment.code();
    }

    public String subject() {
        return ContainmentView.inWords(containment.about());
    }

    public boolean ticks(String key) {
        return ticked.contains(key);
    }

    /** The id that a note would have; another than a decision's. */
    public UUID noteId() {
        return UUID.randomUUID();
    }

    public List<Option> dispositions() {
        return Arrays.stream(Disposition.values())
                .filter(one -> one != Disposition.BY_OPERATOR || vehicle.handedOver())
                .map(one -> new Option(one.name(), Words.of("quality.disposition." + one.name())))
                .toList();
    }

    public List<Option> words() {
        return Arrays.stream(Word.values())
                .map(one -> new Option(one.name(), Words.of("quality.word." + one.name())))
                .toList();
    }
}
