/** Battery packs from receipt to fitting or sending away: inspection, storage, quarantine. One stream a pack. */
package wainbook.pack;
