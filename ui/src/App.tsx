import type { Page } from './contract.ts';
import { CaseCharts, CarCharts } from './charts/Charts.tsx';
import { FeelChart } from './charts/FeelChart.tsx';
import { ChainView } from './chain/ChainView.tsx';
import { Inputs } from './inputs/Inputs.tsx';
import { BarPanel } from './mechanism/BarPanel.tsx';
import { PedalPanel } from './mechanism/PedalPanel.tsx';
import { Announcer } from './parts/Announcer.tsx';
import { Cautions } from './parts/Cautions.tsx';
import { ClutchPanel } from './parts/ClutchPanel.tsx';
import { DataTable } from './parts/DataTable.tsx';
import { Findings } from './parts/Findings.tsx';
import { FootwellPanel } from './parts/FootwellPanel.tsx';
import { Headline } from './parts/Headline.tsx';
import { Ledger } from './parts/Ledger.tsx';
import { MountPanel } from './parts/MountPanel.tsx';
import { NoticeBar } from './parts/NoticeBar.tsx';
import { OverTimePanel } from './parts/OverTimePanel.tsx';
import { SheetsPanel } from './parts/SheetsPanel.tsx';
import { SpreadPanel } from './parts/SpreadPanel.tsx';
import { StopsPanel } from './parts/StopsPanel.tsx';
import { SummaryStrip } from './parts/SummaryStrip.tsx';
import { TopBar } from './parts/TopBar.tsx';
import { TravelBudget } from './parts/TravelBudget.tsx';
import { Verdict } from './parts/Verdict.tsx';
import { WorkingDialog } from './parts/WorkingDialog.tsx';
import { Workings } from './parts/Workings.tsx';
import { Loading, ServerGone, Unreadable } from './parts/Waiting.tsx';
import { SpacePanel } from './space/SpacePanel.tsx';
import { loadCase, session, wholePage } from './state/here.ts';

export function App() {
  const page = wholePage.value;
  if (page === null) {
    return session.unreadable.value.length > 0 ? (
      <Unreadable problems={session.unreadable.value} />
    ) : session.notice.value !== null ? (
      <ServerGone />
    ) : (
      <Loading />
    );
  }
  return <Workbench page={page} />;
}

function Workbench({ page }: { page: Page }) {
  const chosen = loadCase.value;
  return (
    <>
      <a class="skip" href="#results">
        Skip to the results
      </a>
      <a class="skip" href="#inputs">
        Skip to the inputs
      </a>
      <TopBar page={page} />
      <NoticeBar />
      <main id="results" tabIndex={-1}>
        <Verdict verdict={page.verdict} story={page.story} name={page.name} />
        <Headline cards={page.headline} />
        <div class="bench">
          <ChainView page={page} />
          <Findings findings={page.findings} />
          <div class="results">
            {chosen && <CaseCharts loadCase={chosen} />}
            <CarCharts page={page} />
            <div class="pair">
              <TravelBudget rows={page.travel_budget} />
              <FeelChart feel={page.feel_chart} />
            </div>
            <PedalPanel pedal={page.pedal} />
            {page.bar && <BarPanel bar={page.bar} />}
            <section aria-labelledby="failures-title">
              <h2 id="failures-title">When something fails</h2>
              <DataTable table={page.failures} />
            </section>
            <section aria-labelledby="stops-title">
              <h2 id="stops-title">How far it needs</h2>
              <DataTable table={page.stops} />
            </section>
            {page.drums && (
              <section aria-labelledby="drums-title">
                <h2 id="drums-title">Drum brakes</h2>
                <DataTable table={page.drums} />
              </section>
            )}
            {page.parking && (
              <section aria-labelledby="parking-title">
                <h2 id="parking-title">Parking brake</h2>
                <DataTable table={page.parking} />
              </section>
            )}
            <section aria-labelledby="cases-title">
              <h2 id="cases-title">Every case, best setting, other layouts</h2>
              {page.balance_tables.map((table) => (
                <DataTable key={table.caption} table={table} />
              ))}
            </section>
            {page.clutch && <ClutchPanel clutch={page.clutch} />}
            {page.heat && <OverTimePanel id="heat" title="Heat" followed={page.heat} />}
            {page.mount && <MountPanel mount={page.mount} />}
            {page.footwell && <FootwellPanel footwell={page.footwell} />}
            {page.lines.length > 0 && (
              <section aria-labelledby="lines-title">
                <h2 id="lines-title">Lines</h2>
                <DataTable table={page.lines[0]!} />
                <details class="fold small">
                  <summary>Bends, cuts, joints, bleeding</summary>
                  {page.lines.slice(1).map((table) => (
                    <DataTable key={table.caption} table={table} />
                  ))}
                </details>
              </section>
            )}
            <StopsPanel />
            <SpreadPanel />
            <SpacePanel />
            <SheetsPanel />
            <Ledger rows={page.ledger} />
          </div>
        </div>
        <Inputs sections={page.inputs} />
        <Workings workings={page.workings} />
      </main>
      <Cautions sentences={page.cautions} />
      <SummaryStrip page={page} />
      <WorkingDialog workings={page.workings} />
      <Announcer page={page} />
    </>
  );
}
