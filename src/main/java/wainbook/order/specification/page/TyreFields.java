package wainbook.order.specification.page;

import java.util.ArrayList;
import java.util.List;
import wainbook.order.duty.ChassisFigures.AxlePlace;
import wainbook.order.duty.ChassisFigures.Tyres;
import wainbook.order.specification.Bounds;
import wainbook.page.Filled;

/** The tyres of each axle, as fields of the form. */
public record TyreFields(Filled vehicle) {

    private static final List<String> FIELDS = List.of("number", "loadKg", "speedKmh");

    public List<AxlePlace> axles() {
        return List.of(AxlePlace.values());
    }

    public List<String> fields() {
        return FIELDS;
    }

    public String axle(AxlePlace axle) {
        return Bounds.axle(axle);
    }

    public String name(AxlePlace axle, String field) {
        return "tyre" + axle.name() + field;
    }

    public String value(AxlePlace axle, String field) {
        return vehicle.value(name(axle, field));
    }

    public String label(AxlePlace axle, String field) {
        return Bounds.label(name(axle, field));
    }

    public boolean wrong(AxlePlace axle, String field) {
        return vehicle.form().fault(name(axle, field)).isPresent();
    }

    static Filled of(Filled filled, List<Tyres> stated) {
        Filled form = filled;
        for (Tyres tyres : stated) {
            String at = "tyre" + tyres.axle().name();
            form = form.with(at + "number", "" + tyres.number())
                    .with(at + "loadKg", DutyForm.plain(tyres.loadKg()))
                    .with(at + "speedKmh", DutyForm.plain(tyres.speedKmh()));
        }
        return form;
    }

    /** Nothing typed: tyres are read from the vehicle at hand, whatever another of its kind had. */
    static Filled open(Filled filled) {
        Filled form = filled;
        for (AxlePlace axle : AxlePlace.values()) {
            for (String field : FIELDS) {
                form = form.with("tyre" + axle.name() + field, "");
            }
        }
        return form;
    }

    static List<Tyres> read(Figures sent) {
        var stated = new ArrayList<Tyres>();
        for (AxlePlace axle : AxlePlace.values()) {
            String at = "tyre" + axle.name();
            if (!FIELDS.stream().allMatch(field -> sent.blank(at + field))) {
                stated.add(new Tyres(
                        axle, sent.whole(at + "number"), sent.figure(at + "loadKg"), sent.figure(at + "speedKmh")));
            }
        }
        return stated;
    }
}
