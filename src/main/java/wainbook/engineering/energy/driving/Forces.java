package wainbook.engineering.energy.driving;

/** What has to be overcome at the wheels, in newtons; less than nought where it pushes. */
public record Forces(double inertiaN, double gradeN, double rollingN, double airN) {

    public double sumN() {
        return inertiaN + gradeN + rollingN + airN;
    }
}
