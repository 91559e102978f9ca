/** What holds a vehicle back: air, tyres, turning masses, gravity. */
package wainbook.engineering.energy.resistance;
