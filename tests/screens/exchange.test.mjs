// Two vans of one fleet meet over a folder: a storage is chosen, records go and come, and what waits is said.
import assert from "node:assert/strict";
import { mkdirSync } from "node:fs";
import { join } from "node:path";
import test from "node:test";
import { sound } from "./looks.mjs";
import {
  ask,
  browse,
  folder,
  goTo,
  open,
  serve,
  sizes,
} from "./support.mjs";

async function others(page) {
  await goTo(page, "Van");
  await page.getByRole("button", { name: /^Other vans/ }).click();
  await page.getByRole("heading", { level: 1, name: "Other vans" }).waitFor();
}

for (const size of sizes) {
  test(`what one van wrote comes to the other, ${size.width}`, async (t) => {
    const [browser, one, two] = await Promise.all([
      browse(t),
      serve(t),
      serve(t, { empty: true }),
    ]);
    const meeting = join(folder(t), "meeting");
    mkdirSync(meeting);
    const page = await open(t, browser, one.url, size, {
      refused: ["share.set"],
    });
    await others(page);
    await page.getByText("Only devices of one fleet exchange").waitFor();
    await sound(page, "no fleet");

    await ask(one.url, "fleet.begin", { name: "North vans" });
    const { text } = await ask(one.url, "fleet.hand-on", {});
    const { device } = await ask(one.url, "fleet.show", {});
    await ask(two.url, "fleet.join", { text, from: device.mark, as: "own" });
    await ask(two.url, "share.set", { url: `file://${meeting}` });

    await page.reload();
    await others(page);
    await page.getByText(/encrypted with the fleet’s key/).waitFor();
    await sound(page, "no storage");
    await page.getByRole("button", { name: "Folder or stick" }).click();
    await page.getByLabel("Address").fill(`file://${meeting}/not-there`);
    await page.getByRole("button", { name: /^Use this place/ }).click();
    await page.getByText(/names no storage/).waitFor();
    await sound(page, "an address that is none");
    await page.getByLabel("Address").fill(`file://${meeting}`);
    await page.getByRole("button", { name: /^Use this place/ }).click();
    await page.getByText(/records of this device wait/).waitFor();
    await sound(page, "something waits");
    await page.getByRole("button", { name: /^Exchange now/ }).click();
    await page.getByText("All that this device wrote was sent").waitFor();
    await sound(page, "all sent");

    const came = await ask(two.url, "share.exchange", {});
    assert.ok(came.came > 400, JSON.stringify(came));
    const there = await open(t, browser, two.url, size);
    await others(there);
    await there.getByText(/^457 records, to/).waitFor();
    await sound(there, "another device");

    // It waits for the office's nod, and says by which mark it is known.
    await there.getByText("WAITS FOR THE OFFICE’S NOD").waitFor();
    const mark = (await ask(two.url, "fleet.show", {})).device.mark;
    await there.getByText(mark).waitFor();
    await ask(two.url, "register.record", {
      events: [{ body: { kind: "device-named", name: "Van 2" } }],
    });
    const { id } = await ask(two.url, "register.id", {});
    await ask(two.url, "register.record", {
      events: [{ body: { kind: "site-named", site: id, name: "Far quarry" } }],
    });
    await ask(two.url, "share.exchange", {});

    await page.getByRole("button", { name: /^Exchange now/ }).click();
    const van = page.getByRole("button", { name: /Van 2/ });
    await van.click();
    await page.getByText(mark).waitFor();
    await page.getByText(/Far quarry/).waitFor();
    await sound(page, "a device that waits");
    await page.getByRole("button", { name: /^Technician/ }).click();
    await page.getByText("technician", { exact: true }).waitFor();
    await page.getByText("What does not count").waitFor({ state: "detached" });
    await sound(page, "a member");
    await page.getByRole("button", { name: "Back", exact: true }).click();
    await page.getByText(/technician$/).waitFor();
    await page.getByRole("button", { name: /^Exchange now/ }).click();
    await page.getByText("All that this device wrote was sent").waitFor();
    await ask(two.url, "share.exchange", {});
    await there.reload();
    await others(there);
    await there.getByText("This device: technician").waitFor();
    await sound(there, "admitted");

    // It is lost: what it wrote stays, what it signs later is left out.
    await van.click();
    await page.getByRole("button", { name: /^Withdraw it/ }).click();
    await page.getByText("Withdraw Van 2?").waitFor();
    await sound(page, "withdrawing");
    await ask(two.url, "register.record", {
      events: [{ body: { kind: "site-named", site: id, name: "By a thief" } }],
    });
    await page
      .getByRole("button", { name: "Withdraw it", exact: true })
      .click();
    await page.getByText("withdrawn", { exact: true }).waitFor();
    await ask(two.url, "share.exchange", {});
    await ask(one.url, "share.exchange", {});
    await page.reload();
    await others(page);
    await page.getByText("1 record does not count").waitFor();
    await sound(page, "something is left out");
    await van.click();
    await page.getByText(/By a thief/).waitFor();
    await sound(page, "what does not count");
    await page.getByRole("button", { name: "Back", exact: true }).click();
    await ask(two.url, "share.exchange", {});
    await there.reload();
    await others(there);
    await there.getByText("WITHDRAWN", { exact: true }).waitFor();
    await sound(there, "a device that was withdrawn");

    await page.getByRole("button", { name: "Stop exchanging" }).click();
    await page.getByRole("button", { name: /^Use this place/ }).waitFor();
  });
}
