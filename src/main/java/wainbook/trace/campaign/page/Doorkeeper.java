package wainbook.trace.campaign.page;

import jakarta.enterprise.context.RequestScoped;
import wainbook.page.SignedIn;
import wainbook.trace.campaign.page.CampaignView.Doors;
import wainbook.works.Role;

/** Which acts the reader's roles allow; the acts themselves ask their rules again. */
@RequestScoped
class Doorkeeper {

    private final SignedIn signedIn;

    Doorkeeper(SignedIn signedIn) {
        this.signedIn = signedIn;
    }

    Doors doors() {
        boolean leads = signedIn.is(Role.qualityEngineer) || signedIn.is(Role.worksEngineer);
        boolean clerk = signedIn.is(Role.handoverClerk);
        return new Doors(leads, leads || clerk, leads || clerk || signedIn.is(Role.lineManager));
    }
}
