/** Who works here, as what, and with which competences until when: the list, the matrix, one person's page, and the acts. */
package wainbook.works.people;
